/** What is pasted into the terminal (read-from.ts), as text. Ink 7 has this built in. */
import { useStdin } from 'ink';
import { useEffect } from 'react';
import { PASTE } from './read-from.js';

/** @param onPaste the same function at each call, or it is heard anew */
export function usePaste(onPaste: (text: string) => void): void {
  const { stdin } = useStdin();
  useEffect(() => {
    stdin.on(PASTE, onPaste);
    return () => void stdin.off(PASTE, onPaste);
  }, [stdin, onPaste]);
}
