/** Taps by the way they cut and move their chip. */

export type TapStyle = 'spiral-point' | 'spiral-flute' | 'straight-flute' | 'form' | 'thread-mill';

export type TapProcess = 'cut' | 'form' | 'mill';
