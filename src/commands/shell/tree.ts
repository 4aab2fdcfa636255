/** The command tree as data: what completions and the manual page are made from, so that neither can tell of a command that there is not. */
import type { Argument, Command, Option } from 'commander';

/** An option, or an argument that stands for itself. */
export interface Taken {
  /** "--goal", or the name of an argument. */
  readonly name: string;
  readonly short?: string;
  /** What stands for its value: "paint=parts"; absent of one without. */
  readonly value?: string;
  readonly about: string;
  readonly isMany: boolean;
  readonly isNeeded: boolean;
}

/** A command with all below it. */
export interface CommandNode {
  /** Words after the name of the program: [] of the program itself. */
  readonly path: readonly string[];
  readonly aliases: readonly string[];
  readonly about: string;
  readonly takes: readonly Taken[];
  readonly options: readonly Taken[];
  readonly below: readonly CommandNode[];
}

const optionOf = ({ long, short, flags, description, variadic, mandatory }: Option): Taken => {
  const value = /[<[]([^>\]]+)[>\]]/.exec(flags)?.[1]?.replace(/\.{3}$/, '');
  return {
    name: long ?? short ?? flags,
    ...(short === undefined || long === undefined ? {} : { short }),
    ...(value === undefined ? {} : { value }),
    about: description,
    isMany: variadic,
    isNeeded: mandatory,
  };
};

const argumentOf = (argument: Argument): Taken => ({
  name: argument.name(),
  value: argument.name(),
  about: argument.description,
  isMany: argument.variadic,
  isNeeded: argument.required,
});

/** Reads a command and all below it. */
export function treeOf(command: Command, path: readonly string[] = []): CommandNode {
  return {
    path,
    aliases: command.aliases(),
    about: command.description(),
    takes: command.registeredArguments.map(argumentOf),
    options: command.createHelp().visibleOptions(command).map(optionOf),
    below: command
      .createHelp()
      .visibleCommands(command)
      .filter((child) => child.name() !== 'help')
      .map((child) => treeOf(child, [...path, child.name()])),
  };
}

/** A command and all below it, each before those below it. */
export const allIn = (node: CommandNode): CommandNode[] => [node, ...node.below.flatMap(allIn)];
