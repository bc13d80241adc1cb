/** Reads a programme back: where the cutter's centre goes, block by block. For straight moves and arcs in XY. */

export interface Move {
  kind: 'rapid' | 'line' | 'arc';
  from: [number, number, number];
  to: [number, number, number];
  /** Of an arc: centre in XY, radius at both ends, turn in degrees, counter-clockwise positive. */
  arc?: { centre: [number, number]; radius: [number, number]; turn: number };
  feed: number;
  offset: 'off' | 'left' | 'right';
}

export interface Read {
  moves: Move[];
  metric: boolean;
  rpm: number;
}

/** Never lenient: a word it does not know is an error. */
export function interpret(blocks: readonly string[]): Read {
  const at: [number, number, number] = [Number.NaN, Number.NaN, Number.NaN];
  const read: Read = { moves: [], metric: true, rpm: 0 };
  let motion = 0;
  let feed = 0;
  let offset: Move['offset'] = 'off';
  for (const block of blocks) {
    const words = block.split(/\s+/);
    const value = (letter: string): number | undefined => {
      const found = words.find((each) => each.startsWith(letter));
      return found === undefined ? undefined : Number(found.slice(1));
    };
    for (const word of words) {
      if (/^G4[01]$/.test(word)) offset = word === 'G40' ? 'off' : 'left';
      else if (/^G[0123]$/.test(word)) motion = Number(word.slice(1));
      else if (word === 'G20' || word === 'G21') read.metric = word === 'G21';
      else if (/^S\d+$/.test(word)) read.rpm = Number(word.slice(1));
      else if (!/^(?:G(?:17|80|90|94|43)|M[356]|[THD]_|[XYZIJF]-?\d+(?:\.\d+)?)$/.test(word)) {
        throw new Error(`unknown word ${word} in ${block}`);
      }
    }
    feed = value('F') ?? feed;
    const to: [number, number, number] = [
      value('X') ?? at[0],
      value('Y') ?? at[1],
      value('Z') ?? at[2],
    ];
    if (to.every((each, axis) => Object.is(each, at[axis]))) continue;
    const move: Move = {
      kind: motion === 0 ? 'rapid' : motion === 1 ? 'line' : 'arc',
      from: [...at],
      to,
      feed,
      offset,
    };
    if (motion >= 2) {
      const centre: [number, number] = [at[0] + value('I')!, at[1] + value('J')!];
      const angle = ([x, y]: readonly number[]) => Math.atan2(y! - centre[1], x! - centre[0]);
      const distance = ([x, y]: readonly number[]) => Math.hypot(x! - centre[0], y! - centre[1]);
      const turn = (((angle(to) - angle(at)) * 180) / Math.PI + 720) % 360;
      const positive = turn < 1e-6 ? 360 : turn;
      move.arc = {
        centre,
        radius: [distance(at), distance(to)],
        turn: motion === 3 ? positive : positive - 360,
      };
    }
    read.moves.push(move);
    at.splice(0, 3, ...to);
  }
  return read;
}
