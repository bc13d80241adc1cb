import type { ChamferClass } from '../../../core/chamfer/chamfer';
import { inchToMm, roundHalfUp } from '../../../core/units';
import { ChoiceField } from '../../fields/ChoiceField';
import type { Unit } from '../../words';
import { EXPLORE } from '../../words/en/explore';
import type { plannerAddress } from '../../address/request';
import { LengthStepper } from '../Stepper';
import { useLate } from '../useLate';
import {
  chamferChoices,
  limitSpan,
  neededShoulder,
  threadLimitsFor,
  type ThreadOption,
  type Trial,
} from './explore';
import { chamferOf } from '../../../core/chamfer/classes';

export type ControlName = 'fullThread' | 'chamfer' | 'limit' | 'thread';

export interface ControlsProps {
  name: string;
  threads: ThreadOption[];
  controls: ControlName[];
  trial: Trial;
  first: Trial;
  unit: Unit;
  onChange: (trial: Trial) => void;
}

/** Another thread, with depths that suit it: as many diameters as before. */
function withThread(trial: Trial, thread: ThreadOption): Trial {
  // Whole millimetres, or sixteenths of an inch: depths a drawing would give.
  const step = thread.system === 'metric' ? 1 : inchToMm(1 / 16);
  const times = (mm: number) => roundHalfUp((mm * thread.diameter) / trial.thread.diameter, step);
  const fullThread = trial.fullThread === null ? thread.diameter : times(trial.fullThread);
  const { limit } = trial;
  if (limit === undefined) return { ...trial, thread, fullThread };
  // The room stays the same number of pitches, so that only the pitch changes.
  const span = limitSpan(thread);
  const room =
    limit === null ? 0 : ((limit - (trial.fullThread ?? 0)) / trial.thread.pitch) * thread.pitch;
  const moved = Math.min(span.max, Math.max(span.min, fullThread + room));
  return { ...trial, thread, fullThread, limit: moved };
}

/** The writer of a whole hole knows every field of the planner: it comes when the controls do. */
const loadWriter = () => import('../../address/request');

function plannerLink(write: typeof plannerAddress, trial: Trial, unit: Unit): string {
  const { thread, fullThread, limit } = trial;
  return write(
    {
      thread: thread.designation,
      fullThread: fullThread ?? thread.diameter,
      hole:
        typeof limit === 'number'
          ? { kind: 'blind', limit: { at: 'shoulder', depth: limit } }
          : { kind: 'blind' },
      material: 'steel-medium',
    },
    unit,
  );
}

/** One idea for each control; the lesson decides which are there. */
export function ExplorerControls(props: ControlsProps) {
  const { name, threads, controls, trial, unit, onChange } = props;
  const step = unit === 'mm' ? 1 : inchToMm(0.05);
  const has = (control: ControlName) => controls.includes(control);
  const writer = useLate(loadWriter, true);
  const limitStart = () =>
    neededShoulder(
      trial.thread,
      chamferOf(trial.chamfer, trial.thread.system),
      trial.fullThread ?? trial.thread.diameter,
    ).promised;
  return (
    <div class="explorer-controls needs-script">
      {has('thread') && (
        <ChoiceField
          name={`${name}-thread`}
          label={EXPLORE.thread}
          hint={EXPLORE.threadHint}
          value={trial.thread.designation}
          choices={threads.map(({ designation }) => ({ value: designation, label: designation }))}
          onInput={(chosen) => {
            const thread = threads.find(({ designation }) => designation === chosen);
            if (thread) onChange(withThread(trial, thread));
          }}
        />
      )}
      {has('chamfer') && (
        <ChoiceField
          name={`${name}-chamfer`}
          label={EXPLORE.chamfer}
          hint={EXPLORE.chamferHint}
          value={trial.chamfer}
          choices={chamferChoices(trial.thread)}
          onInput={(chosen) => onChange({ ...trial, chamfer: chosen as ChamferClass })}
        />
      )}
      <div class="steppers">
        {has('fullThread') && (
          <LengthStepper
            name={`${name}-full`}
            label={EXPLORE.fullThread}
            hint={EXPLORE.fullThreadHint}
            unit={unit}
            value={trial.fullThread}
            {...threadLimitsFor(trial.thread)}
            step={step}
            onChange={(fullThread) => onChange({ ...trial, fullThread })}
          />
        )}
        {has('limit') && (
          <LengthStepper
            name={`${name}-limit`}
            label={EXPLORE.limit}
            hint={EXPLORE.limitHint}
            unit={unit}
            value={trial.limit === undefined ? limitStart() : trial.limit}
            {...limitSpan(trial.thread)}
            step={step}
            onChange={(limit) => onChange({ ...trial, limit })}
          />
        )}
      </div>
      <div class="actions">
        <button type="button" class="button plain" onClick={() => onChange(props.first)}>
          {EXPLORE.reset}
        </button>
        {writer && (
          <a class="to-planner" href={plannerLink(writer.plannerAddress, trial, unit)}>
            {EXPLORE.planner}
          </a>
        )}
      </div>
    </div>
  );
}
