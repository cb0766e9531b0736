import type { PlanVisit } from '../../shared/compile/index.ts';
import type { SafetyRules } from '../../shared/safety/index.ts';
import { nearestAt, standsAt, stationRule } from '../../shared/safety/index.ts';
import { exposureWords } from './exposure-words.ts';

/** A station of a visit as the safety sheet tells it; '' where a figure does not apply. */
export interface VisitStationRow {
  readonly name: string;
  readonly children: number;
  readonly pieces: string;
  readonly ropeMetres: number | '';
  readonly eyesMetres: number | '';
  readonly practitioners: number;
}

/** The stations of a visit with what the rules say of each. */
export const visitStationRows = (visit: PlanVisit, safety: SafetyRules): readonly VisitStationRow[] =>
  visit.stations.map((station) => {
    const rule = stationRule(safety, station.kind);
    const { edge, exposure } = nearestAt(safety, station);
    const edgeName = safety.edges.find(({ id }) => id === edge)?.name;
    const metres = standsAt(rule, station);
    return {
      name: rule.name,
      children: station.childrenAtOnce,
      pieces: edgeName === undefined ? '' : `${edgeName}: ${exposureWords(exposure)}`,
      ropeMetres: metres > 0 ? metres : '',
      eyesMetres: rule.eyeZoneM > 0 ? rule.eyeZoneM : '',
      practitioners: rule.practitioners,
    };
  });
