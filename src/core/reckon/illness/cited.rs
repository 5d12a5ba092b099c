//! The publications that the tables of illness rest on, each written out once.
//!
//! Pages on the web bear no year. The weak ones among them are kept until better is found.

use super::super::cited::{common, memory, ours, seen};
use crate::source::Source;

pub(super) const DVM360: Source = seen("dvm360", "Fluids and emergencies of lambs", None, "");
pub(super) const EALES_86: Source = seen("Eales et al.", "Watery mouth", Some(1986), "");
pub(super) const FARMOW: Source = seen("Farmow", "Diseases of sheep", None, "");
pub(super) const IRISH_FARMERS_25: Source =
    seen("Irish Farmers Journal", "Sheep health, 2018 to 2025", Some(2025), "");
pub(super) const HOBBY_FARMS: Source = seen("Hobby Farms", "Normal figures of sheep", Some(2012), "");
pub(super) const HAF: Source = seen("haf.bz", "Emergencies of sheep", None, "");
pub(super) const INFOVETS: Source = seen("infovets", "Sheep: examination, dehydration, scours", None, "");
pub(super) const LEVIN: Source = seen("Levin Vets", "Bloat in bottle lambs", None, "");
pub(super) const LIMA: Source =
    seen("Lima et al.", "Pregnancy toxemia in goats: of 21 that were down 19 died", Some(2016), "");
pub(super) const LIVESTOCK: Source =
    seen("Livestock", "Of ewes that farmers treated for low calcium 61% died", Some(2012), "");
pub(super) const FTHENAKIS: Source = seen("Fthenakis", "Metabolic illness of ewes", Some(2022), "MSD manual");
pub(super) const MSD_2022: Source =
    seen("MSD manual", "Retained afterbirth, over 12 to 18 h", Some(2022), "");
pub(super) const MSD_PHOTO: Source = seen("MSD manual", "Evisceration through the vagina", None, "");
pub(super) const NADIS: Source = seen("NADIS", "Sheep health skills", None, "");
pub(super) const NADIS_04: Source = seen("NADIS", "Brain disease", Some(2004), "");
pub(super) const NEW_MEXICO: Source = seen("New Mexico State University", "Sheep diseases", None, "");
pub(super) const PENN: Source = seen("University of Pennsylvania", "Normal figures of sheep", Some(2001), "");
pub(super) const RAISING_SHEEP: Source = seen("Raising Sheep", "Illness of ewes and lambs", None, "");
pub(super) const SCOTT: Source = seen("Scott et al.", "Meningitis of lambs: 1 of 20 lived", Some(1994), "");
pub(super) const SRUC: Source = seen("SRUC", "Clostridial disease", None, "");
pub(super) const WISCONSIN: Source = seen("University of Wisconsin", "Dehydration of calves", None, "");
pub(super) const WIKIVET: Source = seen("WikiVet", "Diseases of sheep", None, "");
pub(super) const NFU: Source = seen("NFU", "A cast ewe", None, "");
pub(super) const VICTORIA: Source = seen("Victoria DPI", "Low calcium in ewes", None, "");
pub(super) const SRVS: Source = seen("SRVS", "Low calcium in ewes", None, "");
pub(super) const LIFESTYLE_NZ: Source = seen("Lifestyle Block NZ", "Ringwomb", Some(2020), "");
pub(super) const FARMERS_WEEKLY_96: Source =
    seen("Farmers Weekly", "Calcium opens a tight cervix in half an hour", Some(1996), "");
pub(super) const FARMERS_WEEKLY_02: Source = seen("Farmers Weekly", "Sudden death of lambs", Some(2002), "");
pub(super) const GREECE: Source = seen(
    "Survey of 7,660 ewes, Greece",
    "1.2% kept the afterbirth over 6 h; signs in 4% under 4 days",
    None,
    "",
);
pub(super) const POLL_DORSET: Source = seen("Poll Dorset breeders", "Gangrenous mastitis", None, "");
pub(super) const AHDB_19: Source = seen("AHDB", "Mastitis", Some(2019), "");
pub(super) const OHIO_09: Source = seen("Ohio State University", "Hard bag", Some(2009), "");
pub(super) const WARWICK: Source =
    seen("University of Warwick", "Treated within 3 days, over 90% well in 10; trimmed, 50%", None, "");
pub(super) const OZARKS_10: Source = seen("Ozarks Farm", "Bloat", Some(2010), "");
pub(super) const VETLIFE: Source = seen("Vetlife", "Grain overload", None, "");
pub(super) const AUSTRALIAN: Source = seen("Australian handbook", "Grain overload", None, "");
pub(super) const UK_VET: Source = seen("UK-Vet", "Copper poisoning", None, "");
pub(super) const TEAGASC: Source = seen("Teagasc", "Abortion in ewes", None, "");
pub(super) const IRISH_FARMERS_18: Source = seen("Irish Farmers Journal", "Abortion", Some(2018), "");
pub(super) const AWANUI: Source = seen("Awanui", "Abortion", None, "");
pub(super) const VET_HELP: Source = seen("Vet Help Direct", "Abortion", Some(2021), "");
pub(super) const GOV_UK: Source = seen("gov.uk", "Notifiable disease: report it at once", None, "");
pub(super) const SCOTTISH: Source =
    seen("Scottish Government", "Anyone pregnant keeps away from lambing ewes", None, "");
pub(super) const NEWBORN: Source =
    ours("A cold lamb: the table of the cold lamb, which rests on sources of its own");
pub(super) const GOTLANDS: Source = seen("Gotland sheep breeders", "Hungry lambs", Some(2022), "");
pub(super) const NZ_AGBIZ: Source = seen("NZAgbiz", "Abomasal bloat", None, "");
pub(super) const JORDAN: Source =
    seen("Survey of lambs, Jordan", "Born without an anus, 2004 to 2009", Some(2009), "");
pub(super) const MARYLAND_19: Source = seen("University of Maryland", "Scours", Some(2019), "");
pub(super) const FAS_18: Source = seen("FAS", "Turned-in eyelids", Some(2018), "");
pub(super) const LAMB_CARE: Source = seen("Lamb Care", "Pneumonia", None, "");
pub(super) const NSW: Source = seen("NSW DPI", "Swayback", None, "");
pub(super) const NSW_07: Source = seen("NSW DPI", "Pulpy kidney", Some(2007), "");
pub(super) const PURDUE_02: Source = seen("Purdue University", "Tetanus", Some(2002), "");
pub(super) const ARKANSAS: Source = seen("University of Arkansas", "Sore mouth", None, "");
pub(super) const HOME_FARM_89: Source = seen("Home Farm", "Two fingers behind the ribs", Some(1989), "");
pub(super) const RATANAPOB_19: Source =
    seen("Ratanapob et al.", "Ketotic from 0.8 mmol/L in the laboratory, 1.0 by meter", Some(2019), "");
pub(super) const OPTIUM_25: Source =
    seen("Study of a handheld meter", "0.8 mmol/L from the neck vein, 0.6 from the ear", Some(2025), "");
pub(super) const SCIELO: Source = seen("SciELO", "A veterinary meter read 51% high in ewes", None, "");
pub(super) const MAKING_MILK_MATTER: Source =
    seen("Making Milk Matter", "Milk goes on while a lamb scours", None, "");
pub(super) const RONAS_VOE: Source = seen("Ronas Voe", "Watery mouth: 10 ml every hour", None, "");
pub(super) const RURAL_NEWS_23: Source = seen("Rural News", "Bloat: yogurt by tube", Some(2023), "");
pub(super) const FARM_HEALTH: Source = seen("FarmHealth Online", "Joint ill comes in by the navel", None, "");
pub(super) const MASSEY_19: Source =
    seen("Massey University", "Lambs lost: lumps in the udder 40%, hard 30%, normal 12%", Some(2019), "");
pub(super) const MAIJALA_88: Source =
    seen("Maijala", "Extra teats in one Finnish ewe in five", Some(1988), "");
pub(super) const MEMORY: Source = memory("No published source yet");
pub(super) const OURS: Source = ours("Our own safety choice");
pub(super) const COMMON: Source = common("Practice in the barn");
