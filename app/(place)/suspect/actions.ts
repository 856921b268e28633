'use server';
import { suspectForm } from '#lib/forms/suspect.ts';
import { reportJar } from '#lib/usecases/report-jar.ts';
import { runAct } from '../../run-act.ts';

/** The sign that was seen, on one jar: back to that jar's page, with its sisters. */
export const report = async (data: FormData): Promise<void> =>
  runAct(data, { form: suspectForm, run: reportJar, back: `/suspect/${String(data.get('code') ?? '')}` });
