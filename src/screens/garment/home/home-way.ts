/** Where home leads. */
export type HomeWay =
  | { to: 'garments' | 'add' | 'measures' | 'convert' | 'tape' | 'sheet' | 'order' }
  | { to: 'work'; work: string }
  /** What is noted at a step, or at a work. */
  | { to: 'note'; home: string }
  | { to: 'decide'; home: string }
  /** A number that is missing: of a quantity, or in a work; to be typed, or read off a tape. */
  | { to: 'missing'; step: string; read?: true };
