/** Faults of the file system in words that say what to do. */

const WORDS: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EROFS: 'the disk is read-only',
  EACCES: 'the folder may not be written to',
  EPERM: 'the folder may not be written to',
  ENOTDIR: 'a part of the path is not a folder',
  EISDIR: 'a folder stands where the file should be',
  ENXIO: 'a device or a pipe stands where the file should be',
  ENOENT: 'the folder cannot be made',
  EIO: 'the disk reports an error',
  EMFILE: 'too many files are open',
  ENFILE: 'too many files are open',
  EFBIG: 'the file may not grow any more',
  ENAMETOOLONG: 'the path is too long',
  ELOOP: 'its links lead in a circle',
};

/** What went wrong, without the path, in a few words. */
export function faultWords(error: unknown): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return WORDS[code ?? ''] ?? code ?? String(message).split('\n')[0] ?? 'unknown fault';
}

/** A path as it may be shown. */
export function shownPath(path: string): string {
  const clean = path.replace(/[\p{Cc}\p{Cf}]/gu, '?');
  return clean.length > 160 ? `...${clean.slice(-157)}` : clean;
}

/** The one line for a learner whose answers are not kept. */
export function notSavingLine(reason: string): string {
  return `Not saving: ${reason}. Practice works, but nothing is kept.`;
}
