/** Members by key, keys in the order in which they first appear. */
export function groupBy<T>(members: readonly T[], keyOf: (member: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const member of members) {
    const key = keyOf(member);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [member]);
    else group.push(member);
  }
  return groups;
}
