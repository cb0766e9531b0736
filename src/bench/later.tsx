import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * A part of the Bench that is fetched once the page stands, so that the page need not wait for it. Until then nothing of it
 * is there.
 *
 * @example const Panel = later(async () => (await import('./Panel.tsx')).Panel)
 */
export function later<Props extends object>(
  fetchPart: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  return function Later(props: Props) {
    const [fetched, setFetched] = useState<{ readonly Part: ComponentType<Props> } | null>(null);
    useEffect(() => {
      void fetchPart().then((Part) => {
        setFetched({ Part });
      });
    }, []);
    return fetched === null ? null : <fetched.Part {...props} />;
  };
}
