/** FNV-1a, 32 bits: the same text gives the same number everywhere, so a choice made by it cannot be moved about. */
export function fixedHash(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return hash;
}
