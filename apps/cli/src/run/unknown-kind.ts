import { allKinds } from '@twelvemonth/growing';
import { nearestName } from '@twelvemonth/workflows';
import { unknownKindText } from '../words/help-words.ts';
import { CliFailure } from './cli-failure.ts';

/** Wrong use, with the kind that was probably meant. */
export function unknownKind(id: string): CliFailure {
  const kinds = allKinds();
  const byName = kinds.find(
    (kind) =>
      kind.name ===
      nearestName(
        id,
        kinds.map((k) => k.name),
      ),
  );
  const nearest =
    nearestName(
      id,
      kinds.map((kind) => kind.id),
    ) ||
    (byName?.id ?? '');
  return new CliFailure(unknownKindText(id, nearest), 2);
}
