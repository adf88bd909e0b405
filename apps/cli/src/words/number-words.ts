/** Whole numbers as they are; small ones with one decimal. */
export function amountText(value: number): string {
  const size = Math.abs(value);
  const rounded = size >= 9.5 ? Math.round(value) : Math.round(value * 10) / 10;
  return rounded.toLocaleString('en-GB', { maximumFractionDigits: 1 });
}

export const countOf = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString('en-GB', { maximumFractionDigits: 1 })} ${count === 1 ? one : many}`;

export const servingsText = (servings: number): string => {
  const text = amountText(servings);
  return `${text} ${text === '1' ? 'serving' : 'servings'}`;
};

export const percentText = (share: number): string => `${Math.round(share * 100)} %`;

/** "one year in ten", for shares that people have to weigh. */
export function oftenText(share: number): string {
  if (share >= 0.95) return 'nearly always';
  if (share >= 0.45) return `${Math.round(share * 10)} in ten`;
  if (share >= 0.15) return `${Math.max(2, Math.round(share * 10))} in ten`;
  return share >= 0.075 ? '1 in ten' : 'rarely';
}

export const listText = (parts: readonly string[], last = 'and'): string =>
  parts.length <= 1 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} ${last} ${parts.at(-1)}`;

export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
