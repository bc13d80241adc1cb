/** What every field is given, and the ids that tie its parts together. */

export interface FieldProps {
  name: string;
  label: string;
  value: string;
  /** Every keystroke or choice. */
  onInput: (value: string) => void;
  /** The reader has finished with it: left it changed, pressed Enter or chose. */
  onSettle?: () => void;
  hint?: string;
  optional?: boolean;
  /** What to type instead; shown only when it is time to complain. */
  problem?: string;
}

/** The id of the control itself: an error summary links to it. A name may hold a designation, an id no space. */
export function fieldId(name: string): string {
  return `field-${name.replaceAll(/\s+/g, '-')}`;
}

/** Ids for aria-describedby: hint, reading and complaint, those that are there. */
export function describedBy(
  name: string,
  parts: { hint?: unknown; reading?: unknown; problem?: unknown },
): string | undefined {
  const ids = (['hint', 'reading', 'problem'] as const)
    .filter((part) => parts[part] !== undefined && parts[part] !== '')
    .map((part) => `${fieldId(name)}-${part}`);
  return ids.length > 0 ? ids.join(' ') : undefined;
}
