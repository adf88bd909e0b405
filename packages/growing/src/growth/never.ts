/** No such day within the weather at hand. */
export const NEVER = Number.MAX_SAFE_INTEGER;
