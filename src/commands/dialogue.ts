/** Asking one plain line after another in a terminal: works for a screen reader as it is. */
import { MudlarkError } from '../errors.js';
import { typedLines } from './typed-lines.js';

/** Exit code of what is left by Ctrl+C. */
const INTERRUPTED = 130;

/**
 * Asks one line after another.
 * @param left what to say when the dialogue is left with Ctrl+C or the input ends
 * @throws MudlarkError with exit code 130 when it is left
 */
export async function dialogue<T>(
  work: (ask: (prompt: string) => Promise<string>) => Promise<T>,
  left = 'left before the end; nothing was written',
): Promise<T> {
  const reader = typedLines(process.stdin, process.stdout);
  const leaving = new AbortController();
  reader.on('close', () => leaving.abort());
  try {
    return await work((prompt) => reader.question(prompt, { signal: leaving.signal }));
  } catch (error) {
    if ((error as Error).name !== 'AbortError') throw error;
    process.stdout.write('\n');
    throw new MudlarkError(left, INTERRUPTED);
  } finally {
    reader.close();
  }
}
