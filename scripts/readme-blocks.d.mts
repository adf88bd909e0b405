export function commandTable(help: string): string;
