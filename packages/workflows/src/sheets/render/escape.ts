const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text from a garden file, made harmless inside HTML and SVG, in content and in quoted attributes. */
export const escapeMarkup = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are not allowed in XML
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replace(/[&<>"']/g, (sign) => entities[sign]!);
