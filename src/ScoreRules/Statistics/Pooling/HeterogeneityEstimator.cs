namespace ScoreRules.Statistics.Pooling;

/// <summary>How the variance between studies, tau squared, is estimated. All are cut off at 0.</summary>
public enum HeterogeneityEstimator
{
    /// <summary>Moments with the weights of the common effect (DerSimonian and Laird 1986, Controlled Clinical Trials 7:177).</summary>
    DerSimonianLaird,

    /// <summary>The value at which Q equals its degrees of freedom (Paule and Mandel 1982, Journal of Research of the National Bureau of Standards 87:377).</summary>
    PauleMandel,

    /// <summary>Restricted maximum likelihood (Viechtbauer 2005, Journal of Educational and Behavioral Statistics 30:261).</summary>
    RestrictedMaximumLikelihood,

    /// <summary>Maximum likelihood (Hardy and Thompson 1996, Statistics in Medicine 15:619).</summary>
    MaximumLikelihood,

    /// <summary>Moments without weights (Hedges and Olkin 1985, Statistical Methods for Meta-Analysis).</summary>
    HedgesOlkin,

    /// <summary>Empirical Bayes (Morris 1983, Journal of the American Statistical Association 78:47); its equation has the root of Paule and Mandel.</summary>
    EmpiricalBayes,

    /// <summary>Residuals weighted by a first unweighted guess (Sidik and Jonkman 2005, Applied Statistics 54:367); above 0 unless all effects are equal.</summary>
    SidikJonkman,

    /// <summary>(Q - k) over the sum of weights (Schmidt and Hunter 2015, Methods of Meta-Analysis; as in Viechtbauer 2005).</summary>
    HunterSchmidt,
}
