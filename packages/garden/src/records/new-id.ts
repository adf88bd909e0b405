import { invariant } from '@twelvemonth/basis';

/** Thirty-one signs that are hard to confuse when read aloud or from a label. */
const signs = '23456789abcdefghjkmnpqrstuvwxyz';

export const slugOf = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .replace(/-+$/, '');

/** "leek-north-k3f9q2": a slug for people and six characters against collisions. `random` is uniform on [0, 1). */
export function newId(slug: string, random: () => number): string {
  let tail = '';
  for (let i = 0; i < 6; i++) {
    const drawn = random();
    invariant(drawn >= 0 && drawn < 1, 'a random number lies on [0, 1)', { drawn });
    tail += signs[Math.floor(drawn * signs.length)];
  }
  const head = slugOf(slug);
  return head === '' ? tail : `${head}-${tail}`;
}
