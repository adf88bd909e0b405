// What is wrong with whole subjects: kinds after inheritance, hazards, roles, families, calendar windows.
import { idOf, sortOf } from './check-rows.mjs';

const packed = (row) => [
  row.parameter,
  row.value,
  row.low,
  row.high,
  row.unit,
  row.source,
  row.locator,
  row.basis,
  row.valid_for,
  row.note,
];

export function groupBySubject(rows) {
  const groups = {};
  for (const row of rows) {
    groups[row.subject] ??= [];
    groups[row.subject].push(packed(row));
  }
  return groups;
}

const sentence = ({ code, detail }) => {
  const { parameter } = detail;
  switch (code) {
    case 'table.parameter-missing':
      return [
        `"${parameter}" is missing`,
        detail.because === undefined
          ? 'give it for the kind, its crop, its family or *'
          : `it is needed because ${detail.because} is ${detail.is}`,
      ];
    case 'table.range-missing':
      return [`"${parameter}" has no low and high`, 'fill both columns'];
    case 'table.harvest-not-listed':
      return [
        `there are rows of harvest "${detail.harvest}"`,
        'add it to the harvests row or take its rows out',
      ];
    case 'table.harvest-unknown':
      return [`"${parameter}" names harvest "${detail.harvest}"`, 'name another harvest of the harvests row'];
    case 'table.gate-needs-cold-range':
      return [
        `"${parameter}" is cold`,
        'give bolting.mode and bolting.cold-base-c, cold-optimum-c, cold-maximum-c',
      ];
    default:
      return [
        `${code} at "${parameter}"`,
        'put the values in order: base < optimum ≤ ceiling, tenth < nine tenths, hardened ≤ soft',
      ];
  }
};

const firstRow = (rows, subject) => {
  const row = rows.find((r) => r.subject === subject);
  return { file: row?.file ?? '?', line: row?.line ?? 1 };
};

const idsOf = (rows, sort) => [
  ...new Set(rows.filter((row) => sortOf(row.subject) === sort).map((row) => idOf(row.subject))),
];

/** Assembles every kind as the engine will: whole when nothing is missing and no row in force is bad; `engine` = the crops modules of the growing package. */
export function checkKinds(rows, rowsBySubject, rules, engine) {
  const problems = [];
  const whole = [];
  const asked = new Set();
  const bad = new Set(rows.filter((row) => row.bad).map((row) => `${row.subject} ${row.parameter}`));
  for (const id of idsOf(rows, 'kind').sort()) {
    const effective = engine.effectiveRows(rowsBySubject, id);
    const isSpoilt = [...effective.values()].some((row) => bad.has(`${row.subject} ${row.parameter}`));
    const built = engine.assembleKind(id, effective, rules.parameters.kind);
    for (const pattern of built.asked) asked.add(pattern);
    const at = firstRow(rows, `kind:${id}`);
    for (const issue of built.issues) {
      const [what, mend] = sentence(issue);
      problems.push({ ...at, what: `kind:${id}: ${what}`, mend });
    }
    if (built.issues.length === 0 && !isSpoilt) whole.push(id);
  }
  return { problems, whole, asked };
}

/** Reads every subject of one sort as the engine will. */
export function checkSort(sort, assemble, rows, rowsBySubject, rules, engine) {
  const problems = [];
  const broken = [];
  const asked = new Set();
  for (const id of idsOf(rows, sort)) {
    const subject = `${sort}:${id}`;
    const unpacked = (rowsBySubject[subject] ?? []).map((row) => [row[0], engine.unpackRow(subject, row)]);
    const read = new engine.TableReader(subject, new Map(unpacked), rules.parameters[sort]);
    assemble(id, read);
    for (const pattern of read.asked) asked.add(pattern);
    for (const issue of read.issues) {
      const [what, mend] = sentence(issue);
      problems.push({ ...firstRow(rows, subject), what: `${subject}: ${what}`, mend });
    }
    if (read.issues.length > 0) broken.push(subject);
  }
  return { problems, broken, asked };
}

/** Names that point at nothing: crops of hazards and kinds, kinds and words of calendar subjects, missing roles. */
export function checkNames(rows, rules) {
  const problems = [];
  const complain = (row, what, mend) => problems.push({ file: row.file, line: row.line, what, mend });
  const kinds = new Set(idsOf(rows, 'kind'));
  const crops = new Set(rows.filter((r) => r.parameter === 'crop').map((r) => r.value));
  const usedFamilies = new Set(rows.filter((r) => r.parameter === 'family').map((r) => r.value));
  const { routes, 'grows-in': growsIn } = rules.parameters.kind;
  for (const row of rows) {
    const sort = sortOf(row.subject);
    const id = idOf(row.subject);
    if (sort === 'crop' && !crops.has(id))
      complain(row, `crop:${id} belongs to no kind`, 'give a kind this crop, or mend the name');
    if (sort === 'family' && !usedFamilies.has(id))
      complain(row, `family:${id} belongs to no crop`, 'give a crop this family, or mend the name');
    if (sort === 'hazard' && row.parameter === 'crops')
      for (const crop of row.value.split('|'))
        if (!crops.has(crop))
          complain(row, `${row.subject} hits unknown crop "${crop}"`, 'use a crop of the kinds tables');
    if (sort === 'calendar') {
      const [kind, route, place] = id.split('/');
      if (!kinds.has(kind))
        complain(row, `${row.subject}: no kind "${kind}"`, 'use a kind of the kinds tables');
      if (!routes.oneOf.includes(route))
        complain(row, `${row.subject}: no route "${route}"`, routes.oneOf.join(', '));
      if (!growsIn.oneOf.includes(place))
        complain(row, `${row.subject}: no place "${place}"`, growsIn.oneOf.join(', '));
    }
    if (sort === 'role' && !rules.names.role.includes(id))
      complain(row, `no role "${id}"`, rules.names.role.join(', '));
  }
  const once = new Map(problems.map((problem) => [problem.what, problem]));
  return [...once.values()];
}

/** Parameters of the list that no assembling code asked for, of sorts that have subjects at all. */
export function unreadParameters(rules, askedBySort) {
  return Object.entries(rules.parameters).flatMap(([sort, specs]) => {
    const asked = askedBySort[sort] ?? new Set();
    const unread = Object.keys(specs).filter((parameter) => asked.size > 0 && !asked.has(parameter));
    return unread.map((parameter) => ({
      file: 'parameters.json',
      line: 1,
      what: `nobody reads "${parameter}" of ${sort}`,
      mend: 'read it where the subject is assembled, or take it out',
    }));
  });
}
