/**
 * All colour and emphasis of the screens, by role. The interface itself is grey on purpose: a coloured frame beside
 * a patch changes how the patch looks. Only paint is in colour.
 */
import type { TextProps } from 'ink';

export type TextStyle = Pick<
  TextProps,
  'color' | 'backgroundColor' | 'bold' | 'dimColor' | 'inverse' | 'underline'
>;

export type Role =
  | 'plain'
  | 'title'
  | 'label'
  | 'muted'
  | 'selected'
  | 'key'
  | 'good'
  | 'fair'
  | 'off'
  | 'notice'
  | 'goal'
  | 'here';

const ROLES: Readonly<Record<Role, TextStyle>> = {
  plain: {},
  title: { bold: true },
  label: { bold: true },
  muted: { dimColor: true },
  selected: { bold: true },
  key: { bold: true },
  good: { bold: true },
  fair: { bold: true },
  off: { bold: true },
  notice: { inverse: true },
  goal: { bold: true },
  here: { bold: true },
};

/** How text of a role is drawn. */
export const styleOf = (role: Role): TextStyle => ROLES[role];

/** A patch of paint: blanks on this background. */
export const patchStyle = (hex: string): TextStyle => ({ backgroundColor: hex });
