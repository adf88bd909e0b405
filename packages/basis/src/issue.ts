/**
 * Doubtful data, collected and never thrown. `code` names the sentence, which lives in the app; `where` is a path
 * or line in what people wrote; `detail` holds the values that the sentence needs.
 */
export interface Issue {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly where: string;
  readonly detail: Readonly<Record<string, string | number>>;
}
