// Text between <!-- generated:NAME --> and <!-- /generated:NAME --> belongs to the scripts.
const openMark = (name) => `<!-- generated:${name} -->`;
const closeMark = (name) => `<!-- /generated:${name} -->`;

export function blockNames(text) {
  return [...text.matchAll(/^<!-- generated:([a-z-]+) -->$/gm)].map((match) => match[1]);
}

export function replaceBlock(text, name, content) {
  const from = text.indexOf(openMark(name));
  const to = text.indexOf(closeMark(name));
  if (from < 0 || to < from)
    throw new Error(`no closed block "${name}": write ${openMark(name)} and ${closeMark(name)}`);
  return `${text.slice(0, from + openMark(name).length)}\n${content.trim()}\n${text.slice(to)}`;
}
