/** When to complain: after a field was left changed or the form was sent, never while it is being typed in. */

import { useCallback, useState } from 'preact/hooks';
import { FIELDS, type InputName, type Inputs } from './inputs';

const ALL: ReadonlySet<InputName> = new Set(FIELDS.map(({ name }) => name));
const NONE: ReadonlySet<InputName> = new Set();

export interface Complaints {
  /** True when this problem is to be shown now. `whole`: it lies in how several inputs sit together. */
  due: (problem: { field: InputName; whole?: boolean }) => boolean;
  /** Counts the times the form was sent in vain. */
  refusals: number;
  typing: (name: InputName) => void;
  left: (name: InputName) => void;
  sent: () => void;
  refused: () => void;
  /** Starts over with these values; what came filled in from an address may be complained of at once. */
  arrived: (values: Inputs) => void;
}

export function useComplaints(): Complaints {
  const [open, setOpen] = useState(NONE);
  const [editing, setEditing] = useState<InputName | null>(null);
  const [refusals, setRefusals] = useState(0);
  const refused = useCallback(() => setRefusals((count) => count + 1), []);
  return {
    due: ({ field, whole = false }) =>
      open.has(field) && field !== editing && !(whole && editing !== null),
    refusals,
    typing: setEditing,
    left: (name) => {
      setEditing(null);
      setOpen((before) => new Set(before).add(name));
    },
    sent: () => {
      setEditing(null);
      setOpen(ALL);
    },
    refused,
    arrived: (values) => {
      const filled = FIELDS.filter(({ name, initial }) => values[name] !== initial);
      setOpen(new Set(filled.map(({ name }) => name)));
      setEditing(null);
      setRefusals(0);
    },
  };
}
