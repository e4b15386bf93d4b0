using ToiletAid.App.Files;
using ToiletAid.Core.Advising;
using ToiletAid.Core.Fitting;
using ToiletAid.Core.Knowledge;
using ToiletAid.Core.Person;

namespace ToiletAid.App.Documents;

/// <summary>Makes the documents of one visit.</summary>
public static class VisitDocuments
{
    /// <summary>What a document on a visit is about, or null when there is no plan in that place.</summary>
    /// <param name="knowledge">Everything known beforehand.</param>
    /// <param name="profile">The profile; its newest visit counts.</param>
    /// <param name="place">Place of the plan that was taken, from 1; null for the first that there is.</param>
    /// <param name="language">Language tag.</param>
    public static Case? About(KnowledgeBase knowledge, Profile profile, int? place, string language)
    {
        var words = DocumentData.Load();
        var settings = new AdviceSettings();
        var advisor = new Advisor(knowledge, settings);
        var advice = advisor.Advise(profile.Latest.Answers);
        var chosen = advice.Ranked.ElementAtOrDefault((place ?? 1) - 1);
        return place is not null && chosen is null ? null : new()
        {
            Knowledge = knowledge,
            Words = words,
            Person = profile.Person,
            Session = profile.Latest,
            Notes = profile.LatestNotes,
            Advice = advice,
            Settings = settings,
            Chosen = chosen,
            Demand = () => chosen is not null && ArticleTrait.IsArticle(chosen.Plan.Aid) ? new ArticleSearch(knowledge, advisor).Of(profile.Latest.Answers, chosen.Plan, chosen.Rank == 1) : null,
            English = English.Of(language, words),
        };
    }

    /// <summary>The clinic note.</summary>
    public static Document Note(Case about) => new NoteDocument(about).Make();

    /// <summary>The sheet for the person, or for a helper.</summary>
    /// <param name="about">The visit.</param>
    /// <param name="toHelper">True for the helper's.</param>
    /// <param name="inPictures">True for large pictures with few words, false for words; null for what the answers ask for.</param>
    public static Document Sheet(Case about, bool toHelper, bool? inPictures = null) => new SheetDocument(about, toHelper, inPictures).Make();

    /// <summary>The data for the record system, a FHIR R4 bundle in JSON.</summary>
    /// <param name="about">The visit.</param>
    /// <param name="made">When the record is made.</param>
    public static string Record(Case about, DateTimeOffset made)
    {
        return JsonText.Of(JsonText.Indented, json => new RecordWriter(json, about, made).Write()) + "\n";
    }
}
