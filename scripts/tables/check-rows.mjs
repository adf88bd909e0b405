// What is wrong with single rows, each with its place and how to mend it. `rules` = { parameters, names } of
// parameters.json; `spec` = parameter-spec.ts of the growing package.
const bases = ['measured', 'handbook', 'practice', 'memory', 'judged'];
const basesWithoutSource = ['practice', 'memory', 'judged'];
const sorts = ['*', 'family', 'crop', 'kind', 'hazard', 'role', 'family-rest', 'calendar'];

export const sortOf = (subject) => (subject === '*' ? '*' : subject.split(':')[0]);
export const idOf = (subject) => subject.slice(subject.indexOf(':') + 1);
const listFor = (subject) => {
  const sort = sortOf(subject);
  return ['*', 'family', 'crop', 'kind'].includes(sort) ? 'kind' : sort;
};

function editDistance(a, b) {
  let above = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i += 1) {
    const here = [i];
    for (let j = 1; j <= b.length; j += 1)
      here[j] = Math.min(above[j] + 1, here[j - 1] + 1, above[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
    above = here;
  }
  return above[b.length];
}
export const nearestName = (name, names) =>
  [...names].sort((a, b) => editDistance(a, name) - editDistance(b, name))[0];

function* valueProblems(row, found, rules, spec) {
  const fault = spec.faultOfValue(found, row.value, rules.names);
  if (fault?.fault === 'not-a-number')
    yield [`"${row.value}" is not a number`, `write a number in ${found.spec.unit}`];
  if (fault?.fault === 'outside-plausible')
    yield [
      `${row.value} ${row.unit} is outside the plausible ${fault.low} to ${fault.high}`,
      'check the unit and the decimal point; if it is true, widen the range in parameters.json',
    ];
  if (fault?.fault === 'not-allowed')
    yield [`"${fault.value}" is not known here`, `one of: ${fault.allowed}`];
  for (const [place, name] of Object.entries(found.filled)) {
    const allowed = rules.names[place];
    if (allowed !== undefined && !allowed.includes(name))
      yield [`"${name}" is no ${place}`, `one of: ${allowed.join(', ')}`];
  }
}

function* rangeProblems(row, found) {
  const [low, high] = [row.low, row.high].map((text) => (text === '' ? null : Number(text)));
  if (found.spec.unit === 'text') {
    if (low !== null || high !== null) yield ['a text has no low and high', 'leave both empty'];
    return;
  }
  if (Number.isNaN(low) || Number.isNaN(high))
    yield ['low or high is not a number', 'write numbers or leave both empty'];
  if ((low === null) !== (high === null)) yield ['only one end of the range', 'give both low and high'];
  if (low !== null && low > Number(row.value))
    yield [`low ${low} is above the value ${row.value}`, 'low ≤ value ≤ high'];
  if (high !== null && high < Number(row.value))
    yield [`the value ${row.value} is above high ${high}`, 'low ≤ value ≤ high'];
  if (found.spec.needsRange && (low === null || high === null))
    yield ['this parameter needs low and high', 'give the range of ordinary gardens'];
  if (row.basis === 'judged' && (low === null || high === null))
    yield ['judged without a range', 'give low and high: how wrong may it be?'];
}

function* originProblems(row, sources) {
  if (row.basis === '') yield ['no basis', `one of: ${bases.join(', ')}`];
  else if (!bases.includes(row.basis)) yield [`"${row.basis}" is no basis`, `one of: ${bases.join(', ')}`];
  else if (row.source === '' && !basesWithoutSource.includes(row.basis))
    yield [`${row.basis} without a source`, 'name a source of sources.json, or call it practice or memory'];
  if (row.source !== '' && !sources.has(row.source))
    yield [
      `source "${row.source}" is in no sources*.json`,
      `did you mean "${nearestName(row.source, sources.keys())}"? else add it`,
    ];
  if (row.basis === 'judged' && row.note === '')
    yield ['judged without a note', 'say in the note why this value'];
}

function* problemsOfRow(row, rules, sources, spec) {
  const sort = sortOf(row.subject);
  if (!sorts.includes(sort) || (sort !== '*' && idOf(row.subject) === '')) {
    yield [
      `"${row.subject}" is no subject`,
      '*, family:X, crop:x, kind:x, hazard:x, role:x, family-rest:X, calendar:kind/route/place',
    ];
    return;
  }
  const specs = rules.parameters[listFor(row.subject)];
  const found = spec.specFor(specs, row.parameter);
  if (found === null) {
    yield [
      `parameter "${row.parameter}" is unknown`,
      `did you mean "${nearestName(row.parameter, Object.keys(specs))}"? else add it to parameters.json`,
    ];
    return;
  }
  if (row.unit !== found.spec.unit)
    yield [`the unit "${row.unit}" is wrong`, `${row.parameter} is in ${found.spec.unit}`];
  yield* valueProblems(row, found, rules, spec);
  yield* rangeProblems(row, found);
  yield* originProblems(row, sources);
}

/** Problems of all rows; a row with one carries `bad: true` and is not compiled. */
export function checkRows(rows, rules, sources, spec) {
  const problems = [];
  const seen = new Map();
  for (const row of rows) {
    const at = { file: row.file, line: row.line };
    for (const [what, mend] of problemsOfRow(row, rules, sources, spec)) {
      problems.push({ ...at, what: `${row.subject} ${row.parameter}: ${what}`, mend });
      row.bad = true;
    }
    const key = `${row.subject} ${row.parameter}`;
    const first = seen.get(key);
    if (first === undefined) seen.set(key, row);
    else {
      const mend = `it stands already in ${first.file}:${first.line}: keep one`;
      problems.push({ ...at, what: `${key}: a second time`, mend });
      row.bad = true;
    }
  }
  return problems;
}

/** Sources that no row names. */
export function unusedSources(rows, sources, namedElsewhere) {
  const used = new Set([...rows.map((row) => row.source), ...namedElsewhere]);
  return [...sources].filter(([id]) => !used.has(id)).map(([id, { file }]) => ({ id, file }));
}
