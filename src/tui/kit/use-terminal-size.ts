/** The size of the terminal. Ink's `useStdout` does not draw again after a resize; this does. */
import { useStdout } from 'ink';
import { useEffect, useState } from 'react';
import type { Size } from './stage.js';

const FALLBACK: Size = { columns: 80, rows: 24 };

const sizeOf = (stdout: { columns?: number; rows?: number }): Size => ({
  columns: stdout.columns || FALLBACK.columns,
  rows: stdout.rows || FALLBACK.rows,
});

/** Columns and rows, kept up to date. */
export function useTerminalSize(): Size {
  const { stdout } = useStdout();
  const [size, setSize] = useState(() => sizeOf(stdout));
  useEffect(() => {
    const onResize = (): void => setSize(sizeOf(stdout));
    onResize();
    stdout.on('resize', onResize);
    return () => void stdout.off('resize', onResize);
  }, [stdout]);
  return size;
}
