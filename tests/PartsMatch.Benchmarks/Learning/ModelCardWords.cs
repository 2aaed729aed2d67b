namespace PartsMatch.Benchmarks.Learning;

/// <summary>What the page says before its figures.</summary>
internal static class ModelCardWords
{
    /// <summary>The introduction.</summary>
    /// <param name="machine">What it was measured on.</param>
    public static string Introduction(string machine) => $"""
        # Model card

        How likely a part is said to do the job, and so the order of lists, comes from costs of each aspect's shortfall, of changes and of gaps in a part's own spec, a few pairs, and a part's own record: [weights.md](weights.md) says how they add up, and [decision 8](decisions/0008-costs-learnt-about-hand-set-ones.md) why. By hand they are somebody's judgement. `train` learns them from outcomes, as an additive logistic on monotone ramps, the most likely one about the hand-set costs rescaled; this page says how good that is.

        **Every outcome here is invented, and so is every figure below.** They show that the method does what it should on data whose truth is known. They say nothing of any real part, and how good a model is at your counter you read at `/model` there.

        ## What it is for, and what it is not for

        It puts parts that fit in order and says how likely each is right the first time. It never makes a part fit: a failed aspect is a gate that no cost opens. It is not for blame: what comes back has many reasons, and a part's record is held at nothing as if by sixteen outcomes that were half and half, before it says much. Outcomes of installations that should not have been tried, or with a reading open that decides, teach nothing and are left out; so are those in which the part was not at fault.

        ## What it was measured on

        Outcomes are drawn from a hidden truth that is not of the model's form: a hazard of softened thresholds, products of two, the harshness of places and the skill of technicians that no record holds, parts' own quality, and a drift from September 2025 on. People mostly put in what looks most like the old part, and know some of what no record tells: what was put in is no fair sample of what could have been (`seed-data/README.md`). seed-data holds 30,000 outcomes of motors and 2,000 of each other family; here more are drawn from the same truth, so that enough can be held out.

        Held out are a third of the places, and of them what happened after February 2026. Learnt is from the other two thirds, up to then. So neither a place nor a day tells on the other side, and what is held out is harder than most of what was learnt from.

        How firmly costs are held was chosen by looking at draws like these, held out in the same way (decision 8): one figure, which every family shares. Where half of a plate is hidden, the machine it is of is among the known ones.

        Parts are put in order for needs that were held out, among all parts on offer that fit with nothing open. Intervals are of 95 %, by drawing whole places anew a thousand times.

        | figure | what it is |
        | --- | --- |
        | expected loss | log-loss in nats if all that was held out happened again and again, by the truth: free of luck, and known for invented data alone |
        | log-loss | the same on what did happen |
        | AUC | how often one that was right was told to be likelier than one that was not |
        | calibration error | how far what was told is off what happened, on the mean over ten bins of equally many; beside it what chance alone would make of it |
        | NDCG@5 | how near the first five are to the best order, each part worth what it is right by the truth |
        | regret | how much more often the best part is right than the first in the list |
        | ceiling of the columns | boosted trees that learnt the truth's own probabilities, not outcomes, from all that may be learnt from: an estimate of the best that anything can tell that sees the columns; trained weights know parts' records besides, and where they lose less, the trees are not near it. They may know a pair of parts again by its figures, as the same parts fail again and again; so there is a second one, told only of old parts that it has not seen |

        Made by `dotnet run --project tests/PartsMatch.Benchmarks -c Release -- model --card docs/model-card.md` on {machine}.

        """;
}
