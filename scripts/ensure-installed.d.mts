type Packages = Readonly<Record<string, object>>;
export function firstStalePackage(locked: Packages, installed: Packages): string | null;
export function ensureInstalled(root: string): void;
