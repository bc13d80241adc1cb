/**
 * What is wrong with an input and what to type instead. English.
 * `{typed}` and the other slots without a kind are echoed as the core gives them.
 */

export const PROBLEMS: Record<string, string> = {
  // The thread, as typed.
  empty: 'Enter the thread as the drawing gives it, like M8x1.25-6H or 1/4-20 UNC-2B.',

  // The hole.
  'full-thread-not-positive':
    'Full thread must be more than 0, like 16. Leave it empty for 1.5 diameters.',
  'thickness-not-positive': 'Thickness must be more than 0, like 12.',
  'limit-not-positive':
    'Enter how deep the hole may go, more than 0, like 22. Leave it empty if nothing is in the way.',
  'number-not-finite': 'Enter a number, like 16 or 12.5.',
  'depth-absurd':
    'That is deeper than any tap reaches. Enter a depth in mm, or check whether you meant inches.',

  // What cuts it.
  'thread-deeper-than-hole':
    'The full thread is deeper than the hole may go. Enter less thread or a deeper hole.',
  'full-thread-over-thickness':
    'The full thread is more than the part is thick. Enter the thickness or less.',
  'clear-below-negative':
    'Room below must be 0 or more, like 30. Leave it empty if nothing is in the way.',
  'hole-unknown':
    'Choose through or blind, and for a blind hole whether its limit is at the shoulder or the point.',
  'material-unknown': 'Choose a material from the list.',
  'drill-point-out-of-range':
    'Drill point must be between 60° and 180°, like 118. 180 is a flat bottom.',
  'web-out-of-range':
    'The tap’s core must be between nothing and the thread’s own diameter, measured across the bottoms of the flutes.',
  'external-centre-out-of-range':
    'Enter how far the point stands out from the tap’s nose, 0 or more, like 2.',
  'coating-out-of-range':
    'Enter the least and the most growth of one surface, thin first, like 0.005 and 0.010.',
  'measured-out-of-range': 'Measured torque must be more than 0 N·m, like 4.5.',
  'drive-unknown': 'Choose a spindle from the list.',
  'drill-series-unknown': 'Choose drills from the list: metric, fraction, number or letter.',
  'pipe-not-planned':
    'Pipe threads are recognised but not planned here yet. Use the table of their own standard.',
  'spindle-out-of-range':
    'Spindle torque and speed must be more than 0, like 30 N·m and 3000 rev/min.',
};
