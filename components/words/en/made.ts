/** The line at a sheet's foot that says when it was made, and by what. English. */

export const MADE = 'Made {day} by {site} {version}.';
