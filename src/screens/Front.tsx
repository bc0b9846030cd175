/** Before a drill: the start sheet, and the bench, the cards and the report behind it, fetched when they are asked for. */
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Start } from './Start.tsx';
import type { Desk, Offered, OpenPage, SidePage } from './types.ts';

type Asked = { readonly page: SidePage; readonly of?: Offered };
type Shown = Asked & { readonly sheet: (desk: Desk, back: () => void) => ComponentChildren };

const load = async (asked: Asked): Promise<Shown> => {
  const { page } = asked;
  if (page === 'bench') {
    const { BenchPage } = await import('./bench/BenchPage.tsx');
    return { ...asked, sheet: (desk, back) => <BenchPage scenarios={desk.library} back={back} /> };
  }
  if (page === 'qualification') {
    const { QualificationPage } = await import('./qualification/QualificationPage.tsx');
    return { ...asked, sheet: (_, back) => <QualificationPage back={back} /> };
  }
  if (page === 'proof') {
    const { ProofPage } = await import('./proof/ProofPage.tsx');
    return {
      ...asked,
      sheet: (desk, back) => (desk.prover ? <ProofPage desk={desk} prover={desk.prover} back={back} /> : null),
    };
  }
  if (page === 'instructor') {
    const { InstructorPage } = await import('./instructor/InstructorPage.tsx');
    return { ...asked, sheet: (desk, back) => <InstructorPage desk={desk} of={asked.of} back={back} /> };
  }
  if (page === 'survey') {
    const { SurveyPage } = await import('./survey/SurveyPage.tsx');
    return { ...asked, sheet: (desk, back) => <SurveyPage desk={desk} back={back} /> };
  }
  const { CardsPage } = await import('./cards/CardsPage.tsx');
  return { ...asked, sheet: (desk, back) => <CardsPage system={desk.settings.value.units} back={back} /> };
};

export const Front = ({ desk }: { desk: Desk }) => {
  const [asked, setAsked] = useState<Asked | null>(null);
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
  const isAway = asked !== null && shown?.page === asked.page && shown.of === asked.of;
  const left = useRef(0);
  useLayoutEffect(() => window.scrollTo(0, isAway ? 0 : left.current), [isAway]);
  const open: OpenPage = (page, of) => {
    left.current = window.scrollY;
    setAsked({ page, of });
  };
  if (isAway && shown) return <>{shown.sheet(desk, () => setAsked(null))}</>;
  return <Start desk={desk} open={open} />;
};
