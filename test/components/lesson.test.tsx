/** The questions of a lesson, as they are answered: with a mouse, a keyboard, either unit, either decimal mark. */

import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { Calculate, judgeAnswer, type CalculateProps } from '../../components/lesson/Calculate';
import { Choose } from '../../components/lesson/Choose';
import { Guess } from '../../components/lesson/Guess';
import { readAnswer } from '../../components/lesson/number';
import { judgeOrder, moved, Order, sentence } from '../../components/lesson/Order';
import { CountStepper, LengthStepper } from '../../components/lesson/Stepper';

afterEach(cleanup);

const said = () =>
  screen
    .getAllByRole('status')
    .map(({ textContent }) => textContent)
    .join(' ');

describe('choosing one', () => {
  const options = [
    { text: 'Up', right: true, why: 'The face leans that way.' },
    { text: 'Down', why: 'It would have to lean the other way.' },
  ];

  test('every option has its reason, and another try is always allowed', () => {
    render(<Choose name="q" question="Which way?" options={options} />);
    const group = screen.getByRole('group', { name: 'Which way?' });
    fireEvent.click(within(group).getByLabelText('Down'));
    fireEvent.click(screen.getByRole('button', { name: 'Check' }));
    expect(said()).toContain('Not that. It would have to lean the other way.');
    fireEvent.click(within(group).getByLabelText('Up'));
    expect(said()).not.toContain('Not that.');
    fireEvent.click(screen.getByRole('button', { name: 'Check' }));
    expect(said()).toContain('Right. The face leans that way.');
  });

  test('checking with nothing chosen asks for a choice', () => {
    render(<Choose name="q" question="Which way?" options={options} />);
    fireEvent.click(screen.getByRole('button', { name: 'Check' }));
    expect(said()).toContain('Choose one first.');
  });

  test('a guess is never called wrong', () => {
    render(<Choose name="q" question="Which way?" options={options} guess />);
    fireEvent.click(screen.getByLabelText('Down'));
    fireEvent.click(screen.getByRole('button', { name: 'That is my guess' }));
    expect(said()).toContain('You guessed “Down”. It would have to lean the other way.');
    expect(said()).not.toContain('Not that');
  });

  test('the answer is there for whoever has no script', () => {
    render(<Choose name="q" question="Which way?" options={options} />);
    const answer = screen.getByText('Show the answer').closest('details');
    expect(answer?.textContent).toContain('Up');
    expect(answer?.textContent).toContain('“Down”: It would have to lean the other way.');
  });
});

const depth: CalculateProps = {
  name: 'depth',
  question: 'How deep?',
  measure: 'length',
  answer: 16,
  tolerance: 0.1,
  slips: [{ value: 15, why: 'The stop clearance is missing.' }],
  working: 'Twelve and three and one.',
};

describe('working out a number', () => {
  test.each([
    ['16', 'mm', true],
    ['16,05', 'mm', true],
    ['15.9', 'mm', true],
    ['16.2', 'mm', false],
    ['0.63 in', 'mm', true],
    ['16 mm', 'in', true],
    ['.63', 'in', true],
    ['0,63"', 'in', true],
    ['16', 'in', false],
  ] as const)('%s on a page in %s', (typed, unit, right) => {
    expect(judgeAnswer(typed, depth, unit).right).toBe(right);
  });

  test('a wrong number with a known cause is told its cause, any other to go on', () => {
    expect(judgeAnswer('15', depth, 'mm').text).toBe('The stop clearance is missing.');
    expect(judgeAnswer('40', depth, 'mm').text).toMatch(/one part at a time/);
    expect(judgeAnswer('deep', depth, 'mm')).toMatchObject({ right: false });
  });

  test('a count takes no unit', () => {
    expect(readAnswer('2,5', 'number', 'mm')).toBe(2.5);
    expect(readAnswer('2.5 mm', 'number', 'mm')).toBeNull();
  });

  test('the tolerance is stated, and Enter checks', () => {
    render(<Calculate {...depth} />);
    const field = screen.getByLabelText(/Your answer/);
    expect(field.getAttribute('aria-describedby')).toContain('depth-hint');
    expect(screen.getByText(/Within 0.1 mm counts/)).toBeTruthy();
    fireEvent.input(field, { target: { value: '16,0' } });
    fireEvent.submit(field.closest('form')!);
    expect(said()).toContain('Right. Twelve and three and one.');
  });
});

describe('an answer finer than a depth', () => {
  // Four times a layer of 0.008 mm is 0.032 mm, which is 0.00126 in. Derived.
  const layer: CalculateProps = { ...depth, answer: 0.032, tolerance: 0.002, slips: [] };

  test('it and its tolerance are written to the thousandth', () => {
    render(<Calculate {...layer} />);
    expect(screen.getByText(/Within 0.002 mm counts/)).toBeTruthy();
    expect(screen.getByText('0.032 mm')).toBeTruthy();
  });

  test.each(['0.0012 in', '0.0013 in', '0,032'])('%s is right', (typed) => {
    expect(judgeAnswer(typed, layer, 'mm').right).toBe(true);
  });
});

describe('putting steps in order', () => {
  const steps = ['Read', 'Reckon', 'Drill'].map((text) => ({ text, why: `${text} comes there.` }));

  test('a step that asks keeps its question mark', () => {
    expect(sentence('Can it flow?')).toBe('Can it flow?');
    expect(sentence('Drill')).toBe('Drill.');
  });

  test('a step moves one place, and not beyond the ends', () => {
    expect(moved([2, 0, 1], 0, 1)).toEqual([0, 2, 1]);
    expect(moved([2, 0, 1], 0, -1)).toEqual([2, 0, 1]);
    expect(moved([2, 0, 1], 2, 1)).toEqual([2, 0, 1]);
  });

  test('feedback names the first step that is out of place', () => {
    expect(judgeOrder([0, 2, 1], steps)).toMatchObject({ right: false });
    expect(judgeOrder([0, 2, 1], steps).text).toBe('Look at number 2. Reckon comes there.');
    expect(judgeOrder([0, 1, 2], steps).right).toBe(true);
  });

  test('buttons move, the move is announced, the focus stays', () => {
    render(<Order name="o" question="In order" steps={steps} start={[1, 0, 2]} />);
    const button = screen.getByRole('button', { name: 'Move down: Reckon' });
    button.focus();
    fireEvent.click(button);
    expect(screen.getAllByRole('listitem').map((item) => item.textContent)[0]).toContain('Read');
    expect(said()).toContain('Reckon is now number 2.');
    expect(document.activeElement?.getAttribute('aria-label')).toBe('Move down: Reckon');
    fireEvent.click(screen.getByRole('button', { name: 'Check' }));
    expect(said()).toContain('That is the order.');
  });
});

describe('a number between limits', () => {
  const length = { name: 'l', label: 'Full thread', min: 4, max: 20, step: 1, hint: 'Between.' };

  test('buttons stop at the limits', () => {
    const onChange = vi.fn<(value: number | null) => void>();
    render(<LengthStepper {...length} unit="mm" value={19.5} onChange={onChange} />);
    fireEvent.click(screen.getByRole('button', { name: 'More: Full thread' }));
    expect(onChange).toHaveBeenLastCalledWith(20);
    fireEvent.click(screen.getByRole('button', { name: 'Less: Full thread' }));
    expect(onChange).toHaveBeenLastCalledWith(18.5);
  });

  test('what is typed is kept, read in either unit, and refused beside the field', () => {
    const onChange = vi.fn<(value: number | null) => void>();
    const { rerender } = render(
      <LengthStepper {...length} unit="mm" value={16} onChange={onChange} />,
    );
    const box = screen.getByLabelText(/Full thread/, { selector: 'input' });
    fireEvent.input(box, { target: { value: '0,5 in' } });
    expect(onChange).toHaveBeenLastCalledWith(12.7);
    fireEvent.input(box, { target: { value: '99' } });
    expect(onChange).toHaveBeenLastCalledWith(null);
    rerender(<LengthStepper {...length} unit="mm" value={null} onChange={onChange} />);
    expect((box as HTMLInputElement).value).toBe('99');
    expect(screen.getByText('Enter a number between 4.0 mm and 20.0 mm.')).toBeTruthy();
  });

  test('a value set from outside is written in the unit of the page', () => {
    const onChange = vi.fn<(value: number | null) => void>();
    render(<LengthStepper {...length} unit="in" value={12.7} onChange={onChange} />);
    const box = screen.getByLabelText(/Full thread/, { selector: 'input' });
    expect((box as HTMLInputElement).value).toBe('0.500');
  });

  test('degrees take a minus, typed either way', () => {
    const onChange = vi.fn<(value: number | null) => void>();
    const lean = { ...length, label: 'Lean', min: -45, max: 45 };
    render(<CountStepper {...lean} unit="°" value={0} onChange={onChange} />);
    const box = screen.getByLabelText(/Lean/, { selector: 'input' });
    fireEvent.input(box, { target: { value: '−10' } });
    expect(onChange).toHaveBeenLastCalledWith(-10);
    fireEvent.input(box, { target: { value: '-10°' } });
    expect(onChange).toHaveBeenLastCalledWith(-10);
  });
});

test('a guess must be a number before it counts, and its answer can be read without one', () => {
  const onGuess = vi.fn<(value: number) => void>();
  render(
    <Guess
      name="g"
      question="How deep?"
      answer="Thirty."
      label="Your guess"
      unit="mm"
      read={(text) => (/^\d+$/.test(text) ? Number(text) : null)}
      complaint="Enter a depth."
      onGuess={onGuess}
    />,
  );
  fireEvent.submit(screen.getByLabelText(/Your guess/).closest('form')!);
  expect(onGuess).not.toHaveBeenCalled();
  expect(screen.getByText('Enter a depth.')).toBeTruthy();
  fireEvent.input(screen.getByLabelText(/Your guess/), { target: { value: '25' } });
  fireEvent.submit(screen.getByLabelText(/Your guess/).closest('form')!);
  expect(onGuess).toHaveBeenCalledWith(25);
  expect(screen.getByText('Thirty.')).toBeTruthy();
});
