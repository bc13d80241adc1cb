/** Where this copy of the handbook was opened from. */

/** True for a copy opened by double-click: it has no address that another device could follow. */
export function fromFolder(): boolean {
  return window.location.protocol === 'file:';
}
