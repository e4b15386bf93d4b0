using ToiletAid.Core.Interview;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.Core.Simulation;

/// <summary>Draws people who would give the answers so far, each with answers to everything else.</summary>
/// <remarks>First many sets of hidden traits are weighed by how likely they lead to the answers so far, and resampled at even steps
/// (Kitagawa 1996, J Comput Graph Stat 5:1, from memory). Each then answers the other questions. Where an answer so far depends on one that was drawn,
/// the person is weighed again by how likely that answer is with it.</remarks>
internal sealed class LikelyPeople
{
    private const double LeastLikelihood = 1e-9;

    /// <summary>Answers of which the likelihoods are kept, 16 kB each, and copies of traits; then they start afresh, so that a long batch does not fill the memory.</summary>
    private const int MostLikelihoods = 512;
    private const int MostCopies = 8192;

    private readonly KnowledgeBase _knowledge;
    private readonly PeopleSimulator _simulator;
    private readonly AnswerCoding _coding;
    private readonly Traits[] _traits;
    private readonly int _people;
    private readonly bool[] _asked;
    private readonly Dictionary<(int Question, int Code, int Given), double[]> _likelihoods = [];
    private readonly Dictionary<(int Traits, int Copy), Traits> _copies = [];

    /// <summary>Makes ready.</summary>
    /// <param name="knowledge">Questions and what people are like.</param>
    /// <param name="coding">How answers are numbered.</param>
    /// <param name="asked">Which questions may be answered, by their number.</param>
    /// <param name="traits">Sets of traits that are weighed.</param>
    /// <param name="people">People drawn.</param>
    /// <param name="seed">Seed of the draws.</param>
    internal LikelyPeople(KnowledgeBase knowledge, AnswerCoding coding, bool[] asked, int traits, int people, ulong seed)
    {
        _knowledge = knowledge;
        _coding = coding;
        _asked = asked;
        _people = people;
        _simulator = new(knowledge, knowledge.People);
        _traits = [.. Enumerable.Range(0, traits).Select(i => new Traits(seed, i))];
    }

    /// <summary>People who would give these answers.</summary>
    internal LikelyPerson[] Given(Answers known)
    {
        double[] weights = Weights(known);
        double total = weights.Sum(), each = total / _people, at = each / 2, sum = 0;
        var people = new LikelyPerson[_people];
        int next = 0;
        for (int i = 0; i < weights.Length && next < _people; i++)
        {
            sum += weights[i];
            for (int copy = 0; next < _people && (at <= sum || i == weights.Length - 1); copy++, next++, at += each)
            {
                people[next] = Person(known, i, copy);
            }
        }

        double all = people.Sum(p => p.Weight);
        foreach (var person in people)
        {
            person.Weight /= all;
        }

        return people;
    }

    /// <summary>Answers of people who would give these, each standing for as many as every other.</summary>
    internal Answers[] Evenly(Answers known)
    {
        var people = Given(known);
        var even = new Answers[people.Length];
        double sum = 0;
        for (int i = 0, next = 0; i < people.Length; i++)
        {
            sum += people[i].Weight;
            while (next < even.Length && ((next + 0.5) / even.Length <= sum || i == people.Length - 1))
            {
                even[next++] = people[i].Filled;
            }
        }

        return even;
    }

    private LikelyPerson Person(Answers known, int traits, int copy)
    {
        if (!_copies.TryGetValue((traits, copy), out var own))
        {
            if (_copies.Count >= MostCopies)
            {
                _copies.Clear();
            }

            _copies[(traits, copy)] = own = copy == 0 ? _traits[traits] : new(_traits[traits], ((long)copy * _traits.Length) + traits);
        }

        var answers = _simulator.Complete(known, own, _asked);
        return new(_coding, answers, known) { Weight = Fit(known, answers, own) };
    }

    /// <summary>How much likelier the answers so far are with those that were drawn.</summary>
    private double Fit(Answers known, Answers drawn, Traits traits)
    {
        double fit = 1;
        foreach (var model in _knowledge.People.Answers)
        {
            if (!model.Given.IsEmpty && known.Knows(model.Question) && model.Given.Any(g => !known.Knows(g.Question)))
            {
                var question = _knowledge.Questions[model.Question];
                var value = known[model.Question]!.Value;
                fit *= Math.Max(LeastLikelihood, _simulator.Likelihood(question, value, drawn, traits)) / Math.Max(LeastLikelihood, _simulator.Likelihood(question, value, known, traits));
            }
        }

        return fit;
    }

    private double[] Weights(Answers known)
    {
        double[] weights = new double[_traits.Length];
        Array.Fill(weights, 1);
        for (int q = 0; q < _coding.Questions.All.Length; q++)
        {
            var question = _coding.Questions.All[q];
            if (!known.Knows(question.Id))
            {
                continue;
            }

            double[] likelihoods = Likelihoods(q, question, known);
            for (int i = 0; i < weights.Length; i++)
            {
                weights[i] *= likelihoods[i];
            }
        }

        return weights;
    }

    private double[] Likelihoods(int index, Question question, Answers known)
    {
        var value = known[question.Id]!.Value;
        int given = 0;
        foreach (var model in _knowledge.People.Answers)
        {
            if (model.Question == question.Id)
            {
                foreach (var g in model.Given)
                {
                    given = (given * 31) + _coding.Of(_coding.Index(g.Question), known[g.Question]) + 2;
                }
            }
        }

        var key = (index, _coding.Of(index, known[question.Id]), given);
        if (!_likelihoods.TryGetValue(key, out double[]? likelihoods))
        {
            if (_likelihoods.Count >= MostLikelihoods)
            {
                _likelihoods.Clear();
            }

            _likelihoods[key] = likelihoods = [.. _traits.Select(t => Math.Max(LeastLikelihood, _simulator.Likelihood(question, value, known, t)))];
        }

        return likelihoods;
    }
}
