/** jsonc-parser's token numbers (its const enum SyntaxKind cannot be imported one file at a time). */
export const token = {
  openBrace: 1,
  closeBrace: 2,
  openBracket: 3,
  closeBracket: 4,
  comma: 5,
  lineComment: 12,
  blockComment: 13,
  lineBreak: 14,
  blank: 15,
  end: 17,
} as const;
