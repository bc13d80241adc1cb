/** Figures that checks and changes name. Common practice, unless said otherwise. */

export const FIGURES = {
  /** Runout of a small tap or its hole that is still fair, mm. */
  runout: 0.03,
  /** Start plane above the face, pitches. */
  startPlane: 3,
  /** Least concentration of an emulsion for tapping, percent. */
  emulsion: 8,
  /** By how much to slow down at a time, percent. */
  slower: 20,
  /** How true a form tap's hole is kept, mm either way. */
  formHole: 0.02,
  /** Temperature gauges are meant for, °C. ISO 1. */
  gaugeTemperature: 20,
  /** Pitch diameter moves so many times the thickness of a coating. Derived. */
  coating: 4,
  /** Change a tap at this share of the worst life seen, percent. */
  life: 75,
  /** Stop clearance of a synchronous spindle and of a floating holder, pitches. */
  stop: 1,
  floatingStop: 3,
  /** Slowest speed in metal that hardens by rubbing, m/min. */
  slowest: 3,
  /** Elongation that a form tap wants, percent. */
  elongation: 10,
} as const;
