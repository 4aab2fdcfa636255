/** Where settings and records live: the XDG base directories, the usual places on other systems. */
import { statSync } from 'node:fs';
import { isAbsolute, join } from 'node:path';
import { isFileFault } from '../errors.js';

const NAME = 'mudlark';

/** Folders of the program; a missing one cannot be found, and `problem` says why. None is created here. */
export interface ProfilePaths {
  readonly data?: string;
  readonly config?: string;
  /** One line, without a full stop. */
  readonly problem?: string;
}

const isFolder = (path: string): boolean => {
  try {
    return statSync(path).isDirectory();
  } catch (error) {
    if (!isFileFault(error)) throw error;
    return false;
  }
};

/** Why the home folder cannot be used; undefined when it can. */
function homeProblem(home: string | undefined): string | undefined {
  if (home === undefined || home === '') return 'HOME is not set';
  if (!isAbsolute(home)) return 'HOME is not an absolute path';
  return isFolder(home) ? undefined : 'HOME names a folder that does not exist';
}

/**
 * Finds the folders from the environment. A relative XDG variable is ignored, as the XDG Base Directory Specification
 * asks. Without a home folder nothing is guessed from the user database: a program started without HOME should not
 * write into one.
 */
export async function findPaths(): Promise<ProfilePaths> {
  const { env, platform } = process;
  if (platform === 'win32' || platform === 'darwin') {
    // Loaded here: it asks for the home folder when it is loaded, and that can throw.
    const { default: envPaths } = await import('env-paths');
    const { data, config } = envPaths(NAME, { suffix: '' });
    return { data, config };
  }
  const problem = homeProblem(env['HOME']);
  const under = (variable: string, ...usual: string[]): string | undefined => {
    const path = env[variable];
    if (path !== undefined && isAbsolute(path)) return join(path, NAME);
    return problem === undefined ? join(env['HOME'] as string, ...usual, NAME) : undefined;
  };
  const data = under('XDG_DATA_HOME', '.local', 'share');
  const config = under('XDG_CONFIG_HOME', '.config');
  return { ...(data && { data }), ...(config && { config }), ...(problem && { problem }) };
}
