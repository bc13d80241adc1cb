/** Words of the page for a whole drawing, above the form. English. */

export const DRAWING_PAGE = {
  title: 'The whole drawing',
  description:
    'Paste every threaded hole of a part as the drawing calls it out: each ready, caution or impossible, the fewest taps and drills, one note to the designer, one set-up sheet.',
  heading: 'Which holes of this drawing can be tapped, and with what?',
  lede: 'Every callout is read back, judged, and given the fewest taps and drills.',
  example: 'Worked example',
};
