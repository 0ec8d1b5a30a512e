import type { Component } from 'vue'
import BracketMeasures from './drawings/BracketMeasures.vue'
import ConnectorMeasures from './drawings/ConnectorMeasures.vue'
import CordWeight from './drawings/CordWeight.vue'
import CradleKnots from './drawings/CradleKnots.vue'
import HangerLengths from './drawings/HangerLengths.vue'
import HookMeasures from './drawings/HookMeasures.vue'
import LevelRing from './drawings/LevelRing.vue'
import LowerStrand from './drawings/LowerStrand.vue'
import PanelMeasures from './drawings/PanelMeasures.vue'
import PlantMeasures from './drawings/PlantMeasures.vue'
import PotInside from './drawings/PotInside.vue'
import PotMeasures from './drawings/PotMeasures.vue'
import PullInPlacePicture from './drawings/PullInPlacePicture.vue'
import PullPicture from './drawings/PullPicture.vue'
import RingMeasures from './drawings/RingMeasures.vue'
import RowSpacing from './drawings/RowSpacing.vue'
import SamplePiece from './drawings/SamplePiece.vue'
import ScrewInJoist from './drawings/ScrewInJoist.vue'
import StickMeasures from './drawings/StickMeasures.vue'
import TenTurns from './drawings/TenTurns.vue'
import TestHangPicture from './drawings/TestHangPicture.vue'
import TroughLength from './drawings/TroughLength.vue'
import WaterVessels from './drawings/WaterVessels.vue'
import WeighingPicture from './drawings/WeighingPicture.vue'
import WrapsCounted from './drawings/WrapsCounted.vue'
import type { Family } from './families'
import type { StepGuide } from './stepGuides'

/** The drawing on which the fields of a family are measured. */
export const FAMILY_DRAWINGS: Readonly<Record<Family, Component>> = {
  pot: PotMeasures,
  trough: TroughLength,
  inside: PotInside,
  vessels: WaterVessels,
  plant: PlantMeasures,
  cord: TenTurns,
  cordWeight: CordWeight,
  lengths: HangerLengths,
  sample: SamplePiece,
  cradle: CradleKnots,
  wraps: WrapsCounted,
  ring: RingMeasures,
  levelRing: LevelRing,
  stick: StickMeasures,
  row: RowSpacing,
  connector: ConnectorMeasures,
  hook: HookMeasures,
  screw: ScrewInJoist,
  bracket: BracketMeasures,
  panel: PanelMeasures,
  second: PotMeasures,
  secondStrand: LowerStrand,
  third: PotMeasures,
  thirdStrand: LowerStrand,
}

/** The picture of what is done step by step. */
export const STEP_PICTURES: Readonly<Record<StepGuide, Component>> = { weighing: WeighingPicture, pullTest: PullPicture, testHang: TestHangPicture, pullInPlace: PullInPlacePicture }
