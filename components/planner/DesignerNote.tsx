/** What to send to whoever drew the hole: the numbers, the options, the question. */

import { useState } from 'preact/hooks';
import type { HolePlan, HoleRequest } from '../../core/plan/types';
import { Fold } from '../fields/Fold';
import { designerNote, type Unit } from '../words';
import { TEXT } from '../words/en/planner';

export interface DesignerNoteProps {
  plan: HolePlan;
  request: HoleRequest;
  unit: Unit;
}

export function DesignerNote({ plan, request, unit }: DesignerNoteProps) {
  const lines = designerNote(plan, request, unit);
  const text = lines.join('\n');
  const [result, setResult] = useState({ text: '', said: '' });
  // One line only says that there is nothing to ask.
  if (lines.length < 2) return null;

  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setResult({ text, said: TEXT.copied });
    } catch {
      // Some browsers allow copying over a secure connection only.
      setResult({ text, said: TEXT.notCopied });
    }
  };
  return (
    <Fold summary={TEXT.designer}>
      <p class="designer-note">{text}</p>
      <p class="actions">
        <button type="button" class="button plain needs-script" onClick={copy}>
          {TEXT.copy}
        </button>
        <span role="status">{result.text === text ? result.said : ''}</span>
      </p>
    </Fold>
  );
}
