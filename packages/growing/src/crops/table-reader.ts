import type { Issue } from '@twelvemonth/basis';
import type { TableRow } from './crop-type.ts';
import { specFor, valuesOf, withFilled } from './parameter-spec.ts';
import type { ParameterSpecs } from './table-types.ts';

/**
 * Reads one subject's effective rows by parameter name and collects what is missing. Only parameters that the list
 * knows can be asked for; `asked` lets a test find parameters that nobody reads.
 */
export class TableReader {
  readonly issues: Issue[] = [];
  readonly asked = new Set<string>();
  readonly #subject: string;
  readonly #rows: ReadonlyMap<string, TableRow>;
  readonly #specs: ParameterSpecs;

  constructor(subject: string, rows: ReadonlyMap<string, TableRow>, specs: ParameterSpecs) {
    this.#subject = subject;
    this.#rows = rows;
    this.#specs = specs;
  }

  #complain(code: string, parameter: string, detail: Issue['detail'] = {}): void {
    this.issues.push({ code, severity: 'error', where: this.#subject, detail: { parameter, ...detail } });
  }

  text(parameter: string): string {
    const found = specFor(this.#specs, parameter);
    if (found === null) {
      this.#complain('table.parameter-unknown', parameter);
      return '';
    }
    this.asked.add(found.pattern);
    const row = this.#rows.get(parameter);
    if (row !== undefined) return row.value;
    const { spec, filled } = found;
    const why = Object.entries(spec.requiredWhen ?? {}).find(([other, values]) =>
      valuesOf(this.text(withFilled(other, filled))).some((v) => values.includes(v)),
    );
    if (spec.required === true || why !== undefined) {
      const because =
        why === undefined
          ? {}
          : { because: withFilled(why[0], filled), is: this.text(withFilled(why[0], filled)) };
      this.#complain('table.parameter-missing', parameter, because);
    }
    return spec.whenMissing ?? '';
  }

  list(parameter: string): string[] {
    const text = this.text(parameter);
    return text === '' ? [] : valuesOf(text);
  }

  number(parameter: string): number {
    const text = this.text(parameter);
    const value = Number(text);
    if (Number.isFinite(value)) return value;
    this.#complain('table.not-a-number', parameter, { value: text });
    return 0;
  }

  range(parameter: string): { readonly low: number; readonly high: number } {
    const row = this.#rows.get(parameter);
    if (row === undefined) return { low: 0, high: 0 };
    if (row.low === '' || row.high === '') this.#complain('table.range-missing', parameter);
    return { low: Number(row.low), high: Number(row.high) };
  }

  yes(parameter: string): boolean {
    return this.text(parameter) === 'yes';
  }

  /** Names at `position` of the parameters that start with `prefix`, in the order of the rows. */
  namesUnder(prefix: string): string[] {
    const depth = prefix.split('.').length - 1;
    const names = new Set<string>();
    for (const parameter of this.#rows.keys())
      if (parameter.startsWith(prefix)) names.add(parameter.split('.')[depth] ?? '');
    return [...names];
  }

  complain(code: string, parameter: string, detail: Issue['detail'] = {}): void {
    this.#complain(code, parameter, detail);
  }
}
