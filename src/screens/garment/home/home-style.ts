import { adopt } from '../../../controls/adopt.ts';
import css from './home.css?inline';

adopt(css);
