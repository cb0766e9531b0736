/**
 * How a value is known: RF re-found in the named source, FM from memory, DER derived here,
 * ASM our judgement, CP common practice without a source, invented made up for a demonstration.
 */
export const STATUSES = ['RF', 'FM', 'DER', 'ASM', 'CP', 'invented'] as const;

export type Status = (typeof STATUSES)[number];
