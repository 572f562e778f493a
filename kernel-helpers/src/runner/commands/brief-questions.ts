/** One thing that a new commission is begun with, typed behind an option or as the answer to a question. */
export interface BriefQuestion {
  /** Its option: `wood` for `--wood`. */
  option: 'client' | 'inside' | 'joint' | 'wood' | 'personal' | 'letters' | 'home' | 'promised';
  /** What can stand behind the option. */
  example: string;
  /** As it is asked. */
  asks: string;
  /** Asked of a box alone: other pieces are sized in a sheet of their own. */
  ofBoxes?: true;
}

/** All of them, in the order in which they are asked. */
export const briefQuestions: readonly BriefQuestion[] = [
  { option: 'client', example: '"Ann Example"', asks: 'Who is it for?' },
  {
    option: 'inside',
    example: '"13 1/4 x 8 x 5 in"',
    asks: 'How large is it inside: front to back x side to side x depth under the lid?',
    ofBoxes: true,
  },
  { option: 'joint', example: 'dovetail', asks: 'Which corner joint?', ofBoxes: true },
  { option: 'wood', example: '"white oak"', asks: 'Which wood?' },
  { option: 'personal', example: 'plain', asks: 'How is it made personal?' },
  { option: 'letters', example: '"A. E."', asks: 'Which letters are cut into the lid, if any?', ofBoxes: true },
  { option: 'home', example: 'Denver', asks: 'Where will it live?' },
  { option: 'promised', example: '2027-03-05', asks: 'When is it promised for?' },
];
