/** What each calculator is called, what it answers, and how a search result describes it. English. */

export const CALCULATORS = {
  'chip-direction': {
    title: 'Chip direction',
    question: 'Where do this tap’s chips go, and is that right for this hole?',
    description:
      'From what you see of a tap, its hand and the hole: where the chips go, whether that is right, and which tap would be.',
  },
  chamfer: {
    title: 'Chamfer',
    question: 'How long is this tap’s chamfer, what is it called, and what does it do?',
    description:
      'Count the threads of a tap’s chamfer: its US class, ISO or DIN form and UK word, its length, the load on each tooth, and torque against chamfer length.',
  },
  'blind-hole-depth': {
    title: 'Blind-hole depth',
    question: 'How deep to drill, how much full thread, or which chamfer fits?',
    description:
      'Any one of drilled depth, full thread and chamfer from the other two, for the longest chamfer of the class and for the middle.',
  },
  'chip-room': {
    title: 'Chip room',
    question: 'Will chips that are pushed ahead fit under the tap?',
    description:
      'How much room the chips of a spiral-point tap want at the bottom of a blind hole, from short chips to long, and how much deeper that is to drill.',
  },
  torque: {
    title: 'Torque',
    question: 'How hard does this tap work, and will it or the spindle stand it?',
    description:
      'Torque of a tap with its band, sharp and worn, as a share of what breaks the tap and of what the spindle gives.',
  },
  'tap-strength': {
    title: 'Tap strength',
    question: 'What breaks this tap, and where should a clutch let go?',
    description:
      'The torque that twists a tap off, from its style or its measured core, with its band; what a job takes of it, sharp and worn; clutch setting, wrench length, danger of the thread.',
  },
  spindle: {
    title: 'Spindle',
    question: 'Has this spindle the torque for this tap, and at which speeds?',
    description:
      'A tap’s torque against the torque curve of a spindle, from a few points of its manual: the share used, the speeds with enough, and why power is not the limit.',
  },
  'thread-limits': {
    title: 'Thread limits',
    question: 'Within which limits must this thread come out?',
    description:
      'Minor and pitch diameter limits of any metric, unified or pipe thread in every class, with left hand, wire inserts, J threads and long engagements.',
  },
  'tap-drill': {
    title: 'Tap drill',
    question: 'Which drill for this thread, and is it inside the class?',
    description:
      'The tap drill for any thread, judged against the class on the drawing with its likely oversize; trap drills named; percent of thread on both bases.',
  },
  'form-tap-hole': {
    title: 'Form-tap hole',
    question: 'Which hole before a form tap, and how closely must it be held?',
    description:
      'The hole before a form tap, the drills near it, how much thread a few hundredths cost, and what a hole you measured would give.',
  },
  gauging: {
    title: 'Gauging',
    question: 'What do the gauges say about this hole?',
    description:
      'GO, NOT GO and plain plugs read together: does the hole pass under ASME B1.2 and under ISO 1502, what is wrong, and what to do next.',
  },
  plating: {
    title: 'Plating',
    question: 'What must be tapped so that the thread passes once it is coated?',
    description:
      'Limits before plating from limits after it: pitch diameter moves four times the thickness. Which tap limit suits and which drill.',
  },
  engagement: {
    title: 'Engagement',
    question: 'How deep is enough for this screw in this metal?',
    description:
      'Full thread needed for the screw to break before the thread strips, with margin, for common screws and metals. Static stripping only; not a rating.',
  },
  'speed-and-cycle': {
    title: 'Speed and cycle',
    question: 'How fast, what feed exactly, and is a rounded feed near enough?',
    description:
      'Tapping speed as a range, the exact feed, what rounding it does to the thread, speeds that need no rounding, what the spindle reaches, cycle time and a commented skeleton.',
  },
  'cost-per-hole': {
    title: 'Cost per hole',
    question: 'What does a tapped hole cost, and how much of it is the risk of a broken tap?',
    description:
      'Machine time, tools, gauging, set-up and the risk of a broken tap, a hole and for the job, with the equation, and beside another plan.',
  },
  'hand-tapping': {
    title: 'Hand tapping',
    question: 'How do I tap this hole by hand, with which taps and how long a wrench?',
    description:
      'Order of the taps in a set, the longest wrench the tap stands, when to turn back and when to clear, blind holes by hand: a card for the bench.',
  },
  'tap-removal': {
    title: 'Broken tap removal',
    question: 'A tap broke off in the hole: how does it come out?',
    description:
      'Ways to get a broken tap out by size, kind, material, access and what the part is worth: times, risks, cautions, and what never to do.',
  },
} as const;
