import { useState } from 'preact/hooks';
import type { Hand } from '../../../core/thread/thread';
import { ChipPath } from '../../drawing/ChipPath';
import { ChoiceField } from '../../fields/ChoiceField';
import { TURN } from '../../words/en/naming';
import { CountStepper } from '../Stepper';
import { LEAN, pictured, told, type Turned } from './turn';

export type TurnControl = 'lean' | 'hand' | 'hole' | 'chips';

interface Props {
  name: string;
  start: Turned;
  controls: TurnControl[];
}

const HANDS = (['right', 'left'] as const).map((value) => ({ value, label: TURN[value] }));
const HOLES = (['blind', 'through'] as const).map((value) => ({ value, label: TURN[value] }));
const CHIPS = [
  { value: 'long', label: TURN.longChips },
  { value: 'short', label: TURN.shortChips },
];

/** The cutting face to turn, and the chip's way. One idea for each control. */
export function FaceTurner({ name, start, controls }: Props) {
  const [turned, setTurned] = useState(start);
  const set = (change: Partial<Turned>) => setTurned({ ...turned, ...change });
  const has = (control: TurnControl) => controls.includes(control);
  return (
    <div class="explorer turner">
      <ChipPath model={pictured(turned)} id={`${name}-figure`} />
      <div>
        <div class="told" role="status">
          <p>{told(turned)}</p>
        </div>
        <div class="explorer-controls needs-script">
          {has('lean') && (
            <CountStepper
              name={`${name}-lean`}
              label={TURN.lean}
              hint={TURN.leanHint}
              unit="°"
              value={turned.lean}
              {...LEAN}
              onChange={(lean) => set({ lean })}
            />
          )}
          {has('hand') && (
            <ChoiceField
              name={`${name}-hand`}
              label={TURN.hand}
              value={turned.cut}
              choices={HANDS}
              onInput={(cut) => set({ cut: cut as Hand })}
            />
          )}
          {has('hole') && (
            <ChoiceField
              name={`${name}-hole`}
              label={TURN.hole}
              value={turned.hole}
              choices={HOLES}
              onInput={(hole) => set({ hole: hole as Turned['hole'] })}
            />
          )}
          {has('chips') && (
            <ChoiceField
              name={`${name}-chips`}
              label={TURN.chips}
              value={turned.chips}
              choices={CHIPS}
              onInput={(chips) => set({ chips: chips as Turned['chips'] })}
            />
          )}
          <div class="actions">
            <button type="button" class="button plain" onClick={() => setTurned(start)}>
              {TURN.reset}
            </button>
          </div>
        </div>
      </div>
    </div>
  );
}
