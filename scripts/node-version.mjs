// Says in one sentence what is needed when Node is too old; plain syntax, so that an old Node gets as far as saying it.
export const leastNode = [20, 19];

export function nodeComplaint(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const newEnough = major > leastNode[0] || (major === leastNode[0] && minor >= leastNode[1]);
  return newEnough
    ? null
    : `Twelvemonth needs Node ${leastNode.join('.')} or newer; this is Node ${version}. Install it from your system or nodejs.org and run the command again.`;
}

export function requireNode() {
  const complaint = nodeComplaint(process.versions.node);
  if (complaint === null) return;
  console.error(complaint);
  process.exit(1);
}
