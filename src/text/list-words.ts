/** "a, b and c". @param last the word before the last one */
export function listWords(words: readonly string[], last = 'and'): string {
  const end = words.at(-1) ?? '';
  return words.length < 2 ? end : `${words.slice(0, -1).join(', ')} ${last} ${end}`;
}
