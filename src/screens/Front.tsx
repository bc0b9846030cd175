/** Before a drill: the start sheet, and the bench, the cards and the report behind it, fetched when they are asked for. */
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Start } from './Start.tsx';
import type { Desk, SidePage } from './types.ts';

type Shown = { readonly page: SidePage; readonly sheet: (desk: Desk, back: () => void) => ComponentChildren };

const load = async (page: SidePage): Promise<Shown> => {
  if (page === 'bench') {
    const { BenchPage } = await import('./bench/BenchPage.tsx');
    return { page, sheet: (desk, back) => <BenchPage scenarios={desk.library} back={back} /> };
  }
  if (page === 'qualification') {
    const { QualificationPage } = await import('./qualification/QualificationPage.tsx');
    return { page, sheet: (_, back) => <QualificationPage back={back} /> };
  }
  if (page === 'proof') {
    const { ProofPage } = await import('./proof/ProofPage.tsx');
    return {
      page,
      sheet: (desk, back) => (desk.prover ? <ProofPage desk={desk} prover={desk.prover} back={back} /> : null),
    };
  }
  if (page === 'survey') {
    const { SurveyPage } = await import('./survey/SurveyPage.tsx');
    return { page, sheet: (desk, back) => <SurveyPage desk={desk} back={back} /> };
  }
  const { CardsPage } = await import('./cards/CardsPage.tsx');
  return { page, sheet: (desk, back) => <CardsPage system={desk.settings.value.units} back={back} /> };
};

export const Front = ({ desk }: { desk: Desk }) => {
  const [asked, setAsked] = useState<SidePage | null>(null);
  const [shown, setShown] = useState<Shown | null>(null);
  useEffect(() => {
    if (asked === null) return;
    let wanted = true;
    load(asked).then(
      (page) => {
        if (wanted) setShown(page);
      },
      (error: unknown) => {
        if (!wanted) return;
        setAsked(null);
        desk.problem.value = `That page could not be fetched (${error instanceof Error ? error.message : String(error)}).`;
      },
    );
    return () => {
      wanted = false;
    };
  }, [asked, desk]);
  const isAway = asked !== null && shown?.page === asked;
  const left = useRef(0);
  useLayoutEffect(() => window.scrollTo(0, isAway ? 0 : left.current), [isAway]);
  const open = (page: SidePage): void => {
    left.current = window.scrollY;
    setAsked(page);
  };
  if (isAway && shown) return <>{shown.sheet(desk, () => setAsked(null))}</>;
  return <Start desk={desk} open={open} />;
};
