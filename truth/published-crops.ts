/** Which of our crops stand for a crop that a publication names. None: the publication has it and we do not. */
import { allKinds, type CropType } from '../packages/growing/src/index.ts';
import table from './published-crops.json' with { type: 'json' };

/** One kind grown from seed for every crop of ours that the published name stands for, in the order of the catalogue. */
export function seedKindsFor(published: string): readonly CropType[] {
  const crops = (table as Readonly<Record<string, readonly string[]>>)[published];
  if (crops === undefined) throw new Error(`truth/published-crops.json does not have "${published}"`);
  return crops.flatMap((crop) => allKinds().find((k) => k.crop === crop && k.startsAs === 'seed') ?? []);
}

/** Published crops that we have no kind of: their figures wait outside the report, and the page names them. */
export const cropsWithoutKind = (): readonly string[] =>
  Object.keys(table).filter((published) => seedKindsFor(published).length === 0);
