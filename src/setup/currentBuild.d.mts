export function sourceStamp(root: string): string;
export function currentBuild(kept?: string): Promise<string>;
