import type { CropType } from './crop-type.ts';

/**
 * The same kind from sets of another size, mm across: a bigger set is past its juvenile stage sooner by so many
 * reference days a millimetre, so it meets more cold and runs to seed more (Heath 1943; held to 0 days). Kinds that do
 * not start as sets, or do not bolt, stay as they are.
 */
export function withSetSize(kind: CropType, acrossMm: number): CropType {
  if (kind.bolting === null || kind.setAcrossMm <= 0) return kind;
  const days = kind.bolting.juvenileDays - (acrossMm - kind.setAcrossMm) * kind.bolting.setDaysPerMm;
  return { ...kind, setAcrossMm: acrossMm, bolting: { ...kind.bolting, juvenileDays: Math.max(0, days) } };
}
