import { useEffect, useRef, useState } from 'preact/hooks';

const hasFiles = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes('Files') === true;

/**
 * Takes files that are dropped anywhere on the page, where nothing on it takes them first: a browser would go to them and
 * leave the page. True while files are held over it.
 */
export function useDrop(take: (files: readonly File[]) => void): boolean {
  const [isOver, setIsOver] = useState(false);
  const taker = useRef(take);
  taker.current = take;
  useEffect(() => {
    const over = (event: DragEvent): void => {
      if (event.defaultPrevented || !hasFiles(event)) return;
      event.preventDefault();
      setIsOver(true);
    };
    const leave = ({ relatedTarget }: DragEvent): void => {
      if (relatedTarget === null) setIsOver(false);
    };
    const drop = (event: DragEvent): void => {
      setIsOver(false);
      if (event.defaultPrevented || !hasFiles(event)) return;
      event.preventDefault();
      taker.current([...(event.dataTransfer?.files ?? [])]);
    };
    addEventListener('dragover', over);
    addEventListener('dragleave', leave);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('dragleave', leave);
      removeEventListener('drop', drop);
    };
  }, []);
  return isOver;
}
