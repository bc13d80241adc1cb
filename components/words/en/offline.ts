/** What the handbook says about being kept on the device, and the page shown where a page is not. */

export const OFFLINE = {
  /** `{percent}` of everything but the thread pages. */
  keeping: 'Being kept on this device for use without a network: {percent} %.',
  /** Everything but the thread pages is here. */
  threads:
    'Works without a network on this device. Thread pages kept so far: {kept} of {of}; the rest follow.',
  all: 'All of it is kept on this device and works without a network.',
  failed: 'Not all of it could be kept on this device yet. It is tried again by itself.',

  newer: 'A newer copy of the handbook is ready.',
  use: 'Open it now',
  keepOld: 'Not yet',
  taking:
    'The newer copy opens as soon as this one has finished what it is doing. That can take half a minute.',
  replaced: 'Another window opened a newer copy of the handbook. Reload here when it suits you.',
  reload: 'Reload',
  stays: 'What you typed stays.',
};

export const NO_NETWORK_PAGE = {
  title: 'No network',
  description: 'What to do when a page is not kept on this device and there is no network.',
  heading: 'No network, and this page is not kept here yet',
  text: 'The planner, the calculators, the lessons and the search are kept on a device after its first visit, the thread pages a little later. This page is not among them yet.',
  search: 'Search what is kept',
  plan: 'Plan a hole',
  threads: 'Limits of any thread, worked out on this device',
  again: 'When the network is back, load this page again.',
};

export const NOT_FOUND_PAGE = {
  title: 'No such page',
  description: 'There is no page at this address.',
  heading: 'No page at this address',
  text: 'The address may have been typed wrong, or the page has moved. A thread is quickest found by typing it.',
};

/** The note beside the pages of a copy that opens from a folder. */
export const FOLDER = {
  file: 'READ-ME.txt',
  text: `TAPPED HOLE HANDBOOK {version}, as a folder

Open index.html by double-click, in Chromium, Chrome, Edge or Firefox. Nothing is installed
and nothing is asked of any network.

Unpack the whole zip first: a page opened inside the zip finds neither its script nor its look.

Jobs, drawings and readings are kept by the browser on this device where it allows that for
files. Save them as a file now and then: a browser may forget them when the folder moves.

A newer handbook is a newer folder. Put it beside this one; your files open in it.
`,
};
