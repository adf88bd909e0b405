/** An honest answer that may be "cannot": told apart by `kind`, never thrown. */
export type Outcome<T, Reason extends string = string> =
  | { readonly kind: 'done'; readonly value: T }
  | {
      readonly kind: 'cannot';
      readonly reason: Reason;
      readonly detail: Readonly<Record<string, string | number>>;
    };

export const done = <T>(value: T): Outcome<T, never> => ({ kind: 'done', value });
export const cannot = <Reason extends string>(
  reason: Reason,
  detail: Readonly<Record<string, string | number>> = {},
): Outcome<never, Reason> => ({ kind: 'cannot', reason, detail });
