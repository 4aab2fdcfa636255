/** Commands for the shell around the program: completions, the manual page. */
import type { Command } from 'commander';
import type { Program } from './program.js';

async function treeHere(command: Command) {
  const { treeOf } = await import('./shell/tree.js');
  return treeOf(command);
}

export function addShellCommands({ command, print }: Program, version: string): void {
  command
    .command('completions')
    .description('print a script that completes commands, options and ids when Tab is pressed')
    .argument('<shell>', 'bash, zsh or fish')
    .addHelpText(
      'after',
      `
Examples:
  mudlark completions bash > ~/.local/share/bash-completion/completions/mudlark
  mudlark completions zsh > ~/.zfunc/_mudlark
  mudlark completions fish > ~/.config/fish/completions/mudlark.fish`,
    )
    .action(async (wanted: string) => {
      const [{ completionScript }, { knownValues, SHELLS }, { UsageError }, tree] = await Promise.all([
        import('./shell/completions.js'),
        import('./shell/values.js'),
        import('../errors.js'),
        treeHere(command),
      ]);
      const shell = SHELLS.find((known) => known === wanted);
      if (shell === undefined)
        throw new UsageError(`completions are for bash, zsh or fish; not "${wanted.slice(0, 40)}"`);
      print(completionScript(shell, tree, knownValues()));
    });
  command
    .command('manual')
    .description('print the manual page; read it with: mudlark manual | man -l -')
    .action(async () => {
      const [{ manualPage }, tree] = await Promise.all([import('./shell/manual.js'), treeHere(command)]);
      print(manualPage(tree, version));
    });
}
