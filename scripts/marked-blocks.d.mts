export function blockNames(text: string): string[];
export function replaceBlock(text: string, name: string, content: string): string;
