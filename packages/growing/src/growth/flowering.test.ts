import { expect, test } from 'vitest';
import { allKinds } from '../crops/catalogue.ts';

test('beans flower before they give pods, by a month or so of growth', () => {
  const flowering = allKinds().filter((kind) => kind.floweringDays > 0);
  expect(flowering.map((kind) => kind.crop)).toContain('broad-bean');
  for (const kind of flowering)
    for (const pods of kind.harvests.filter((harvest) => harvest.habit === 'picks')) {
      expect(pods.startDays - kind.floweringDays, kind.id).toBeGreaterThan(15);
      expect(pods.startDays - kind.floweringDays, kind.id).toBeLessThan(40);
    }
});
