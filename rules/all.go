package rules

import "loudlint/linter/check"

// Group is the checks about one side of a system.
type Group struct {
	Title  string
	Checks []*check.Check
}

// Groups gives every check, by what it is about, in the order in which they are
// listed and asked.
func Groups() []Group {
	return []Group{
		{"Loading", []*check.Check{
			LoadMargin,
			ZoneLoad,
			ImpedanceFloor,
			LineVoltage,
			LoudspeakerOverdriven,
			TapSetting,
			OutputSharing,
			ReadingAgrees,
			EarthReading,
			LevelReading,
			OversizedAmplifier,
			SpareCapacity,
		}},
		{"Cable", []*check.Check{
			CableLoss,
			CableCurrent,
			CableTreble,
			CableInsulation,
			RouteSeparation,
			WireClass,
			FireCable,
			LineRedundancy,
		}},
		{"Controls on the line", []*check.Check{
			AttenuatorRating,
			AttenuatorOverride,
			OverrideSupply,
			AttenuatorTerminals,
			LineMonitor,
		}},
		{"Inputs and the signal chain", []*check.Check{
			PriorityWired,
			PageRouting,
			MonoSum,
			InputFit,
			InputTaken,
			GainRange,
			SourceLoading,
			SourceIsolation,
			MicrophoneLead,
			ProgrammeFit,
			MountingFit,
			BassProtection,
		}},
		{"Sound", []*check.Check{
			SpeechLevel,
			CoverageSpacing,
			LevelSpread,
			Intelligibility,
			EchoArrival,
			FeedbackMargin,
		}},
		{"Supply and surroundings", []*check.Check{
			StandbyBattery,
			MainsLoad,
			RackHeat,
			ExposureRating,
			Polarity,
			Unfed,
			TypicalData,
		}},
		{"Safety", []*check.Check{
			SafetyNotes,
			MuteLink,
		}},
		{"Agreements", []*check.Check{
			DeviationStands,
		}},
	}
}

// All gives every check, in the order of the groups.
func All() []*check.Check {
	var all []*check.Check
	for _, g := range Groups() {
		all = append(all, g.Checks...)
	}
	return all
}
