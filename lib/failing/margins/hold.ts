/** One way in which a unit can come away: what holds it there and what draws on it, both in `unit`. */
export interface Hold {
  readonly mode:
    | 'hangs in its joints'
    | 'tips off its bed'
    | 'drawn out by suction'
    | 'shears down its back'
    | 'peels off its back'
    | 'drawn off by suction';
  readonly kind: 'gravity' | 'wind';
  readonly resistance: number;
  readonly demand: number;
  readonly unit: 'N' | 'N·mm';
}
