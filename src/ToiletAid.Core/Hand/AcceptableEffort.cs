namespace ToiletAid.Core.Hand;

/// <summary>The share of a hand's greatest force that may be asked of it, by how long and how often.</summary>
public static class AcceptableEffort
{
    /// <summary>Greatest acceptable effort by duty cycle.</summary>
    /// <param name="dutyCycle">Time under effort as a share of the whole time, 0 to 1.</param>
    /// <param name="exponent">Exponent of the relation, above 0; 0.24.</param>
    /// <param name="daySeconds">Length of the working day on which it was built, s, above 1; 28 800. One second of it leaves all force free.</param>
    /// <returns>Share of the greatest force, 0 to 1; falls as the duty cycle grows.</returns>
    /// <remarks>Potvin 2012, Human Factors 54:175-188: 1 - (DC - 1/28800)^0.24 (formula from memory).</remarks>
    public static double OfDutyCycle(double dutyCycle, double exponent, double daySeconds)
    {
        double beyondOneSecond = Math.Clamp(dutyCycle, 0, 1) - (1 / daySeconds);
        return beyondOneSecond <= 0 ? 1 : Math.Clamp(1 - Math.Pow(beyondOneSecond, exponent), 0, 1);
    }

    /// <summary>The lesser of what the day's repetitions and the time held in one clean allow.</summary>
    /// <param name="heldSeconds">Time under effort in one clean, s; 0 or more.</param>
    /// <param name="cleansPerDay">Cleans a day; above 0.</param>
    /// <param name="coefficients">Coefficients.</param>
    /// <returns>Share of the greatest force, 0 to 1.</returns>
    /// <remarks>The endurance law is too kind at low efforts (15 % of the greatest grip force was held 456 s by 14 young men, Heinzl 2025, where it
    /// gives 711 s), so each second beyond those about which it is silent (34) counts more than once. Up to there the peak force alone counts.</remarks>
    public static double Share(double heldSeconds, double cleansPerDay, HandCoefficients coefficients)
    {
        double duty = heldSeconds * cleansPerDay / coefficients.EffortDaySeconds;
        double overTheDay = OfDutyCycle(duty, coefficients.EffortExponent, coefficients.EffortDaySeconds);
        double silent = Math.Min(heldSeconds, coefficients.Endurance.B0);
        double counted = silent + ((heldSeconds - silent) * coefficients.EnduranceCaution);
        return Math.Min(overTheDay, coefficients.Endurance.Effort(counted));
    }
}
