import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { LESSON } from '../words/en/lesson';
import { fill } from '../words/template';
import { useLive } from './live';
import { Answer, Verdict, type Said } from './Verdict';

export interface Step {
  text: string;
  /** Why it stands where it stands; shown when another step has taken its place. */
  why: string;
}

export interface OrderProps {
  name: string;
  question: string;
  /** In the right order. */
  steps: Step[];
  /** The order to start from: places in `steps`. Must not be the right one. */
  start: number[];
  /** Hears of every answer that is given. */
  onAnswered?: (right: boolean) => void;
}

/** A step or question as a sentence: with its own mark at the end, or a full stop. */
export const sentence = (text: string): string => (/[.?!]$/.test(text) ? text : `${text}.`);

/** The list with the step at `from` moved by one. */
export function moved(order: number[], from: number, by: -1 | 1): number[] {
  const to = from + by;
  if (to < 0 || to >= order.length) return order;
  const next = [...order];
  [next[from], next[to]] = [next[to]!, next[from]!];
  return next;
}

/** What to say to an order: right, or the first step that is out of place and why. */
export function judgeOrder(order: number[], steps: Step[]): Said {
  const place = order.findIndex((step, index) => step !== index);
  if (place < 0) return { right: true, opening: LESSON.inOrder, text: '' };
  const why = steps[place]?.why ?? '';
  return { right: false, text: fill(LESSON.firstOut, { place: String(place + 1), why }, 'mm') };
}

interface MoveProps {
  id: string;
  label: string;
  arrow: string;
  off: boolean;
  onClick: () => void;
}

function Move(props: MoveProps) {
  return (
    <button
      type="button"
      class="move"
      data-move={props.id}
      aria-label={props.label}
      aria-disabled={props.off}
      onClick={props.onClick}
    >
      <span aria-hidden="true">{props.arrow}</span>
    </button>
  );
}

/** Steps to put in order with buttons; nothing is dragged. */
export function Order({ name, question, steps, start, onAnswered }: OrderProps) {
  const live = useLive();
  const [order, setOrder] = useState(start);
  const [said, setSaid] = useState<Said | null>(null);
  const [spoken, setSpoken] = useState('');
  const list = useRef<HTMLOListElement>(null);
  const pressed = useRef<string | null>(null);

  // Moving an item can cost its button the focus; whoever pressed it wants to press it again.
  useLayoutEffect(() => {
    if (pressed.current === null) return;
    list.current?.querySelector<HTMLElement>(`[data-move="${pressed.current}"]`)?.focus();
    pressed.current = null;
  }, [order]);

  const move = (from: number, by: -1 | 1) => {
    const next = moved(order, from, by);
    if (next === order) return;
    pressed.current = `${order[from]} ${by}`;
    setOrder(next);
    setSaid(null);
    const step = steps[order[from]!]?.text ?? '';
    setSpoken(fill(LESSON.movedTo, { step, place: String(from + by + 1) }, 'mm'));
  };

  return (
    <form
      class="check"
      novalidate
      onSubmit={(event) => {
        event.preventDefault();
        const judged = judgeOrder(order, steps);
        setSaid(judged);
        onAnswered?.(judged.right);
      }}
    >
      <p class="question" id={`${name}-question`}>
        {question}
      </p>
      <ol class="steps" ref={list} aria-labelledby={`${name}-question`}>
        {order.map((step, index) => {
          const text = steps[step]?.text ?? '';
          return (
            <li key={step}>
              <span class="step-text">{text}</span>
              {live && (
                <span class="moves">
                  <Move
                    id={`${step} -1`}
                    label={`${LESSON.up}: ${text}`}
                    arrow="↑"
                    off={index === 0}
                    onClick={() => move(index, -1)}
                  />
                  <Move
                    id={`${step} 1`}
                    label={`${LESSON.down}: ${text}`}
                    arrow="↓"
                    off={index === order.length - 1}
                    onClick={() => move(index, 1)}
                  />
                </span>
              )}
            </li>
          );
        })}
      </ol>
      <p class="unseen" role="status">
        {spoken}
      </p>
      <Verdict said={said} />
      <div class="check-row">
        {live && <button class="button">{LESSON.check}</button>}
        <Answer>
          <ol>
            {steps.map(({ text, why }) => (
              <li key={text}>
                <strong>{sentence(text)}</strong> {why}
              </li>
            ))}
          </ol>
        </Answer>
      </div>
    </form>
  );
}
