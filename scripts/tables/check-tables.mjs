// All checks of the catalogue tables in one place; knows no files, so that tests can feed it rows.
import { checkRows, sortOf, unusedSources } from './check-rows.mjs';
import { checkKinds, checkNames, checkSort, groupBySubject, unreadParameters } from './check-subjects.mjs';

/** Every model that a parameter names has its page, so that a number can be followed to it. */
function withoutModelPage({ modelPages, parameters }) {
  if (modelPages === undefined) return [];
  const named = Object.values(parameters).flatMap((specs) => Object.values(specs).map((spec) => spec.readBy));
  return [...new Set(named)]
    .filter((readBy) => !(readBy in modelPages))
    .map((readBy) => ({
      file: 'parameters.json',
      line: 1,
      what: `no page is named for "${readBy}"`,
      mend: 'name a page of docs/models in modelPages, or leave the text empty where no model reads it',
    }));
}

export function checkTables({ rows, rules, sources, namedElsewhere, engine }) {
  const problems = checkRows(rows, rules, sources, engine);
  const rowsBySubject = groupBySubject(rows);
  const kinds = checkKinds(rows, rowsBySubject, rules, engine);
  const rest = {
    hazard: checkSort('hazard', engine.assembleHazard, rows, rowsBySubject, rules, engine),
    role: checkSort('role', engine.assembleRole, rows, rowsBySubject, rules, engine),
    'family-rest': checkSort('family-rest', engine.assembleFamily, rows, rowsBySubject, rules, engine),
    calendar: checkSort('calendar', engine.assembleCalendar, rows, rowsBySubject, rules, engine),
  };
  const asked = { kind: kinds.asked };
  problems.push(...kinds.problems);
  for (const [sort, found] of Object.entries(rest)) {
    problems.push(...found.problems);
    asked[sort] = found.asked;
    for (const subject of found.broken) delete rowsBySubject[subject];
  }
  const whole = new Set(kinds.whole);
  const left = Object.keys(rowsBySubject).filter((s) => sortOf(s) === 'kind' && !whole.has(s.slice(5)));
  for (const subject of left) delete rowsBySubject[subject];
  for (const row of rows.filter((r) => r.bad)) {
    const kept = rowsBySubject[row.subject]?.filter(([parameter]) => parameter !== row.parameter);
    if (kept !== undefined) rowsBySubject[row.subject] = kept;
  }
  problems.push(...checkNames(rows, rules), ...unreadParameters(rules, asked), ...withoutModelPage(rules));
  return {
    problems,
    unused: unusedSources(rows, sources, namedElsewhere),
    kindIds: kinds.whole,
    incomplete: left.map((subject) => subject.slice(5)),
    rowsBySubject,
  };
}
