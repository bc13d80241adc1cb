/** One sitting: a question, its answer when asked for, and the learner's own verdict. */

import { useEffect, useRef, useState } from 'preact/hooks';
import type { Recalled } from '../../core/review/schedule';
import { REVIEW } from '../words/en/review';
import { fill } from '../words/template';

export interface Prompt {
  /** `lesson/id`. */
  id: string;
  lesson: string;
  ask: string;
  answer: string;
}

interface Props {
  prompts: readonly Prompt[];
  titleOf: (lesson: string) => string;
  /** Keeps an outcome and says what comes of it. */
  onAnswer: (id: string, outcome: Recalled) => string;
  onEnd: (said: string) => void;
}

export function Sitting({ prompts, titleOf, onAnswer, onEnd }: Props) {
  const [queue, setQueue] = useState(prompts);
  const [shown, setShown] = useState(false);
  const [said, setSaid] = useState('');
  const missed = useRef(new Set<string>());
  const place = useRef<HTMLParagraphElement>(null);
  const [prompt, ...rest] = queue;

  // The question, then its answer, take the place of the button that was pressed.
  useEffect(() => place.current?.focus(), [prompt, shown]);
  if (!prompt) return null;

  const answer = (outcome: Recalled) => {
    setSaid(onAnswer(prompt.id, outcome));
    if (outcome === 'forgotten') missed.current.add(prompt.id);
    const left = outcome === 'forgotten' ? [...rest, prompt] : rest;
    setShown(false);
    setQueue(left);
    if (left.length > 0) return;
    const count = prompts.length;
    const right = count - missed.current.size;
    onEnd(fill(REVIEW.done, { right: String(right), count: String(count) }, 'mm'));
  };

  return (
    <section class="check sitting" aria-label={REVIEW.title}>
      <p class="sitting-over">
        <span>{titleOf(prompt.lesson)}</span>
        <span>{fill(REVIEW.left, { left: String(queue.length) }, 'mm')}</span>
      </p>
      <p class="question" tabIndex={-1} {...(!shown && { ref: place })}>
        {prompt.ask}
      </p>
      {shown ? (
        <>
          <p class="sitting-answer" tabIndex={-1} ref={place}>
            {prompt.answer}
          </p>
          <p class="quiet">{REVIEW.judge}</p>
          <div class="check-row">
            <button type="button" class="button" onClick={() => answer('remembered')}>
              {REVIEW.knew}
            </button>
            <button type="button" class="button plain" onClick={() => answer('forgotten')}>
              {REVIEW.forgot}
            </button>
          </div>
        </>
      ) : (
        <div class="check-row">
          <button type="button" class="button" onClick={() => setShown(true)}>
            {REVIEW.show}
          </button>
          <button type="button" class="link-button" onClick={() => onEnd('')}>
            {REVIEW.stop}
          </button>
        </div>
      )}
      <p class="quiet" role="status">
        {said}
      </p>
    </section>
  );
}
