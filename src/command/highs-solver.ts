import load from 'highs';
import type { Solve } from '../../shared/day/index.ts';
import { solverOf } from '../solver/solver-of.ts';

/** The solver HiGHS, in this process, no network: all it is asked together takes about `seconds`. */
export const highsSolver = async (seconds: number): Promise<Solve> => solverOf(await load(), seconds);
