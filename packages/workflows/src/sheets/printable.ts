/** A sheet in words, ready to be laid out: every renderer takes this, so that no renderer knows any sheet. */

/** done: solid · firm: bold · draft: dotted underline · late: waited from before · plain: not a line of the plan. */
export type PrintState = 'done' | 'firm' | 'draft' | 'late' | 'plain';

export interface PrintColumn {
  readonly title: string;
  /**
   * number: short label number · what: the name of the line · amount: stands beside the name · detail: running text ·
   * figure: right-aligned · blank: left empty for a pencil.
   */
  readonly role: 'number' | 'what' | 'amount' | 'detail' | 'figure' | 'blank';
  /** Share of the sheet's width, in parts. */
  readonly width: number;
  /** What the text layout writes before the cell; empty where the cell speaks for itself. */
  readonly label: string;
}

export interface PrintRow {
  readonly state: PrintState;
  readonly cells: readonly string[];
}

export interface PrintGroup {
  readonly heading: string;
  readonly rows: readonly PrintRow[];
}

export interface PrintTable {
  readonly kind: 'table';
  /** lines: a block of text a row · grid: aligned columns. Only the text layout tells them apart. */
  readonly layout: 'lines' | 'grid';
  readonly tick: boolean;
  readonly columns: readonly PrintColumn[];
  readonly groups: readonly PrintGroup[];
}

export interface PrintList {
  readonly kind: 'list';
  readonly tick: boolean;
  readonly columns: 1 | 2 | 3;
  readonly items: readonly { readonly text: string; readonly state: PrintState }[];
}

export interface PrintSection {
  readonly heading: string;
  readonly note: string | null;
  readonly block: PrintTable | PrintList | null;
  /** True where a new area begins: a larger heading. */
  readonly opens: boolean;
}

export interface Printable {
  readonly language: string;
  readonly orientation: 'landscape' | 'portrait';
  readonly title: string;
  /** Right of the title: whose sheet, printed when. */
  readonly aside: string;
  readonly intro: readonly string[];
  readonly sections: readonly PrintSection[];
  readonly foot: readonly string[];
}
