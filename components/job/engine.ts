/** What the card's page reckons and draws with, in one piece that loads when there is a card to draw. */

export * from '../planner/engine';
export { Card } from './Card';
